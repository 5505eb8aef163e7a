package dryfloor.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Locale;
import java.util.Optional;

/**
 * An output that remembers why it could not be written. A {@link PrintWriter} alone only knows that
 * it could not, which nobody would be told.
 */
public final class Output {

  private final Remembering remembering;
  private final PrintWriter writer;

  /**
   * An output.
   *
   * @param target where it goes
   * @param piped whether another program reads it, which may stop reading whenever it has enough
   */
  public Output(Writer target, boolean piped) {
    this.remembering = new Remembering(target, piped);
    this.writer = new PrintWriter(remembering);
  }

  /** For libraries that want one. */
  public PrintWriter writer() {
    return writer;
  }

  void print(String text) {
    writer.print(text);
    writer.flush();
  }

  /** Why not everything could be written; nothing where the reader just had enough. */
  Optional<String> failure() {
    writer.flush();
    return remembering.failure;
  }

  /** Drops everything after the first failure, so that the first reason is the one told. */
  private static final class Remembering extends Writer {

    private final Writer target;
    private final boolean piped;
    private boolean broken;
    private Optional<String> failure = Optional.empty();

    Remembering(Writer target, boolean piped) {
      this.target = target;
      this.piped = piped;
    }

    @Override
    public void write(char[] text, int start, int length) {
      attempt(() -> target.write(text, start, length));
    }

    @Override
    public void flush() {
      attempt(target::flush);
    }

    @Override
    public void close() {
      attempt(target::close);
    }

    private void attempt(Writing writing) {
      if (broken) {
        return;
      }
      try {
        writing.run();
      } catch (IOException e) {
        broken = true;
        String reason = String.valueOf(e.getMessage());
        boolean hadEnough = piped || reason.toLowerCase(Locale.ROOT).contains("pipe");
        failure = hadEnough ? Optional.empty() : Optional.of(reason);
      }
    }
  }

  /** Something that may fail to be written. */
  private interface Writing {
    void run() throws IOException;
  }
}
