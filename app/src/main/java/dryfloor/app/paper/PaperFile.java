package dryfloor.app.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;

/**
 * A file of papers.
 *
 * @param name what follows the name of the drawing
 * @param extension of its name, with the dot
 * @param kept whether it is a record, which never takes the place of an older one
 * @param content made when it is asked for
 */
public record PaperFile(String name, String extension, boolean kept, Content content) {

  /** Papers that take the place of those made before. */
  static PaperFile renewed(String name, String extension, Content content) {
    return new PaperFile(name, extension, false, content);
  }

  /** A record beside those made before. */
  static PaperFile kept(String name, String extension, Content content) {
    return new PaperFile(name, extension, true, content);
  }

  /**
   * Where it goes in a folder: a record has a number where there is one of this name already.
   *
   * @param stem name of the drawing
   */
  public Path placeIn(Path folder, String stem) {
    Path place = folder.resolve(stem + name + extension);
    for (int number = 2; kept && Files.exists(place); number++) {
      place = folder.resolve(stem + name + "." + number + extension);
    }
    return place;
  }

  /** The same file, which is begun at once beside what else these makers do. */
  public PaperFile begun(Executor makers) {
    CompletableFuture<byte[]> begun = CompletableFuture.supplyAsync(this::made, makers);
    return new PaperFile(name, extension, kept, () -> finished(begun));
  }

  private byte[] made() {
    try {
      return content.bytes();
    } catch (IOException unmade) {
      throw new UncheckedIOException(unmade);
    }
  }

  private static byte[] finished(CompletableFuture<byte[]> begun) throws IOException {
    try {
      return begun.join();
    } catch (CompletionException failed) {
      if (failed.getCause() instanceof UncheckedIOException unmade) {
        throw new IOException(unmade.getCause());
      }
      throw failed;
    }
  }

  /** What a file holds. */
  public interface Content {
    /**
     * All of it.
     *
     * @throws IOException if it can't be made
     */
    byte[] bytes() throws IOException;
  }
}
