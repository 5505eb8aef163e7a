package dryfloor.app.view.file;

import dryfloor.app.shipped.Example;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.charset.StandardCharsets;

/** Drawings that differ in their name. */
final class SampleDrawings {

  private SampleDrawings() {}

  static Installation named(String name) {
    String text = new String(Example.FIRST_LOOK.content(), StandardCharsets.UTF_8);
    String renamed = text.replaceFirst("\"name\": \"[^\"]*\"", "\"name\": \"" + name + "\"");
    return switch (InstallationFile.readText(renamed)) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }

  static Opening.Opened opened(Opening opening) {
    return switch (opening) {
      case Opening.Opened opened -> opened;
      case Opening.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }
}
