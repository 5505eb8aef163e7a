package dryfloor.app.command;

import dryfloor.app.sample.SampleInstallation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Drawings as files, for commands to read. */
final class DrawingFiles {

  private DrawingFiles() {}

  static Path sound(Path folder, String name) throws IOException {
    return Files.writeString(folder.resolve(name), SampleInstallation.text());
  }

  static Path wrong(Path folder, String name) throws IOException {
    String text = SampleInstallation.text().replace("\"level\": \"262 mm\"", "\"level\": \"262\"");
    return Files.writeString(folder.resolve(name), text);
  }
}
