package dryfloor.app.view;

import dryfloor.app.view.file.DrawingFile;
import dryfloor.app.view.file.Opening;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.charset.StandardCharsets;

/** Drawings that a user begins with: they have no file yet. */
final class Begun {

  private Begun() {}

  /** A drawing that came with the program. */
  static Opening.Opened with(byte[] shipped) {
    return switch (InstallationFile.readText(new String(shipped, StandardCharsets.UTF_8))) {
      case Reading.Read read ->
          new Opening.Opened(
              DrawingFile.untitled(read.installation()), read.installation(), read.warnings());
      case Reading.Rejected rejected ->
          throw new IllegalStateException(
              "a drawing came with the program that it can't read: " + rejected.problems());
    };
  }
}
