package dryfloor.app.sample;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;

/** The drawings that come with the program. */
public final class ShippedDrawing {

  private ShippedDrawing() {}

  /** Reads one, such as {@code first-look/as-drawn.json}. */
  public static Installation read(String scenario) {
    return switch (InstallationFile.read(Path.of("..", "scenarios", scenario))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }
}
