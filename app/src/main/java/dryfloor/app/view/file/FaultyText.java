package dryfloor.app.view.file;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.file.SafeFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The text of a file that is no drawing yet, while it is mended.
 *
 * @param path of its file; none where there is none
 * @param stamp of the file when it was last read or written here
 * @param saved what the file holds, its lines ending in a line feed; empty where that is not known
 * @param text to begin with, its lines ending in a line feed
 * @param lineEnd what ends a line in the file
 */
public record FaultyText(
    Optional<Path> path, Stamp stamp, Optional<String> saved, String text, String lineEnd) {

  private static final String FEED = "\n";
  private static final String RETURN_AND_FEED = "\r\n";

  static Optional<FaultyText> of(Path file, Stamp stamp) {
    return InstallationFile.text(file)
        .map(
            text ->
                new FaultyText(
                    Optional.of(file),
                    stamp,
                    Optional.of(lines(text)),
                    lines(text),
                    lineEnd(text)));
  }

  /** What a program left behind when it died in the middle of mending. */
  public static FaultyText of(Unsaved unsaved) {
    return new FaultyText(
        unsaved.path(),
        unsaved.stamp(),
        Optional.empty(),
        lines(unsaved.text()),
        lineEnd(unsaved.text()));
  }

  /** What ends its first line; all lines are written so. */
  private static String lineEnd(String text) {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? RETURN_AND_FEED : FEED;
  }

  /** A text as it stands in the file. */
  private String asInFile(String now) {
    return now.replace(FEED, lineEnd);
  }

  private static String lines(String text) {
    return text.replace("\r\n", "\n").replace('\r', '\n');
  }

  /** Whether the file holds something else than this text. */
  public boolean isUnsaved(String now) {
    return !saved.equals(Optional.of(now));
  }

  /** To be kept for the case that the program dies. */
  public Unsaved unsaved(String now) {
    return new Unsaved(path, stamp, asInFile(now));
  }

  /** Reads a text as a file is read. */
  public static Reading read(String text) {
    return InstallationFile.readText(text, NamedFailures::check);
  }

  /** The drawing that this text has become; the file holds it only once it is saved. */
  public Opening.Opened opened(Reading.Read read, String now) {
    Optional<Installation> held =
        isUnsaved(now) ? Optional.empty() : Optional.of(read.installation());
    DrawingFile file = new DrawingFile(path, held, stamp, WrittenUnits.of(now));
    return new Opening.Opened(file, read.installation(), read.warnings());
  }

  /** What came of writing the text as it is. */
  public sealed interface Written {

    /** The file holds the text now; what it held before is beside it as {@code .bak}. */
    record Kept(FaultyText text) implements Written {}

    /** Others have written the file since it was read; it is as they left it. */
    record ChangedByOthers() implements Written {}

    /** Nothing was written. */
    record Failed(String reason) implements Written {}
  }

  /**
   * Writes a text into the file as it is, with all its mistakes.
   *
   * @throws IllegalStateException if there is no file
   */
  public Written write(String now) {
    Path file = path.orElseThrow(() -> new IllegalStateException("this text has no file"));
    try {
      Stamp there = Stamp.of(file);
      if (!there.equals(Stamp.MISSING) && !there.equals(stamp)) {
        return new Written.ChangedByOthers();
      }
      String written = asInFile(now);
      SafeFile.replace(file, written);
      return new Written.Kept(
          new FaultyText(path, Stamp.ofText(written), Optional.of(now), now, lineEnd));
    } catch (IOException e) {
      return new Written.Failed(String.valueOf(e));
    }
  }
}
