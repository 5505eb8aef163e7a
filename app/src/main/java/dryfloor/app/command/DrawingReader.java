package dryfloor.app.command;

import dryfloor.model.file.Reading;
import java.io.IOException;
import java.nio.file.Path;

/** Whoever reads installation files. */
public interface DrawingReader {

  /**
   * Reads one file.
   *
   * @throws IOException if the file itself can't be read
   */
  Reading read(Path file) throws IOException;
}
