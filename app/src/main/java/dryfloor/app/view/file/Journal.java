package dryfloor.app.view.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The unsaved changes of one window on the disk. It is held by the program that writes it; one that
 * nobody holds was left behind by a program that died.
 */
public final class Journal implements AutoCloseable {

  static final String ENDING = ".journal";

  private final Path file;
  private final Path holdFile;
  private final Hold hold;

  private Journal(Path file, Path holdFile, Hold hold) {
    this.file = file;
    this.holdFile = holdFile;
    this.hold = hold;
  }

  /** Takes hold of the journal of this name; nothing where somebody else has it. */
  static Optional<Journal> take(Path folder, String name) throws IOException {
    Path holdFile = folder.resolve(name + ".lock");
    return Hold.take(holdFile)
        .map(hold -> new Journal(folder.resolve(name + ENDING), holdFile, hold));
  }

  /** Where it is kept. */
  public Path file() {
    return file;
  }

  /** What it keeps; nothing where nothing is unsaved. */
  public Optional<Unsaved> read() throws IOException {
    try {
      return Unsaved.read(Files.readString(file, StandardCharsets.UTF_8));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** Keeps these changes, in one step. */
  public void write(Unsaved unsaved) throws IOException {
    AtomicText.write(file, unsaved.written());
  }

  /** Nothing is unsaved any more. */
  public void clear() throws IOException {
    Files.deleteIfExists(file);
  }

  /** Lets go of it; what it keeps stays. */
  @Override
  public void close() throws IOException {
    hold.close();
    if (!Files.exists(file)) {
      Files.deleteIfExists(holdFile);
    }
  }
}
