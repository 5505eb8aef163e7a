package dryfloor.app.command;

import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** Whoever reads installation files. */
public interface DrawingReader {

  /**
   * Reads one file; one that is missing or can't be read is rejected like a wrong one.
   *
   * @param further what else is found in an installation that is sound so far
   */
  Reading read(Path file, Function<Installation, List<Finding>> further);
}
