package dryfloor.app.command;

import dryfloor.model.file.Reading;
import java.nio.file.Path;

/** Whoever reads installation files. */
public interface DrawingReader {

  /** Reads one file; one that is missing or can't be read is rejected like a wrong one. */
  Reading read(Path file);
}
