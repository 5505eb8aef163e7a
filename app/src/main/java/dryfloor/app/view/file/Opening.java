package dryfloor.app.view.file;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Problem;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What came of opening a file. */
public sealed interface Opening {

  /**
   * A drawing.
   *
   * @param warnings what should be looked at in it
   */
  record Opened(DrawingFile file, Installation drawing, List<Problem> warnings) implements Opening {
    public Opened {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * No drawing, and everything that is wrong with it.
   *
   * @param text to be mended; none where the file can't be had as text
   */
  record Refused(Path path, List<Problem> problems, Optional<FaultyText> text) implements Opening {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file. */
  static Opening of(Path path) {
    Path file = path.toAbsolutePath().normalize();
    // The stamp first: what is written between the two is then noticed, not written over.
    Stamp stamp;
    Units units;
    try {
      stamp = Files.isRegularFile(file) ? Stamp.of(file) : Stamp.MISSING;
      units = Files.isRegularFile(file) ? WrittenUnits.of(file) : Units.METRIC;
    } catch (IOException unreadable) {
      stamp = Stamp.MISSING;
      units = Units.METRIC;
    }
    return switch (InstallationFile.read(file, NamedFailures::check)) {
      case Reading.Read read ->
          new Opened(
              new DrawingFile(Optional.of(file), Optional.of(read.installation()), stamp, units),
              read.installation(),
              read.warnings());
      case Reading.Rejected rejected ->
          new Refused(file, rejected.problems(), FaultyText.of(file, stamp));
    };
  }
}
