package dryfloor.app.view.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which window of this program shows which file, and whether another program has the file open too.
 *
 * @param <W> a window
 */
public final class OpenWindows<W> {

  private final Path folder;
  private final Map<W, Shown> shown = new HashMap<>();

  /** A file that a window shows, and the hold on it where nobody else had it. */
  private record Shown(Path file, Optional<Hold> hold) {}

  /** Holds are kept in this folder, which is made when needed. */
  public OpenWindows(Path folder) {
    this.folder = folder;
  }

  /** The window of this program that shows a file. */
  public Optional<W> showing(Path file) {
    Path real = real(file);
    return shown.entrySet().stream()
        .filter(entry -> entry.getValue().file().equals(real))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * A window shows this file from now on, and no other.
   *
   * @return whether it is the only one; not so where another program shows it as well
   * @throws IOException if that can't be known
   */
  public boolean shows(W window, Path file) throws IOException {
    Path real = real(file);
    if (Optional.ofNullable(shown.get(window)).map(Shown::file).equals(Optional.of(real))) {
      return true;
    }
    shut(window);
    shown.put(window, new Shown(real, Optional.empty()));
    Files.createDirectories(folder);
    Optional<Hold> hold =
        Hold.take(folder.resolve(Stamp.ofText(real.toString()).digest() + ".lock"));
    shown.put(window, new Shown(real, hold));
    return hold.isPresent();
  }

  /** A window shows no file any more. */
  public void shut(W window) {
    Optional.ofNullable(shown.remove(window)).flatMap(Shown::hold).ifPresent(OpenWindows::let);
  }

  private static void let(Hold hold) {
    try {
      hold.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Two names of one file are one file. */
  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException notThere) {
      return file.toAbsolutePath().normalize();
    }
  }
}
