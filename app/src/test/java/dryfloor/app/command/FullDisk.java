package dryfloor.app.command;

import java.io.IOException;
import java.io.Writer;

/** An output that takes nothing. */
final class FullDisk extends Writer {

  private final String reason;

  FullDisk(String reason) {
    this.reason = reason;
  }

  @Override
  public void write(char[] text, int start, int length) throws IOException {
    throw new IOException(reason);
  }

  @Override
  public void flush() throws IOException {
    throw new IOException(reason);
  }

  @Override
  public void close() {}
}
