package dryfloor.model.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Replaces a file so that, whenever the program dies, the old or the new text is whole on disk. */
public final class SafeFile {

  /** A save takes a moment; what lies there for longer was left by a program that died in one. */
  private static final Duration LEFT_BEHIND = Duration.ofHours(1);

  private static final String UNIQUE = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private SafeFile() {}

  /**
   * Replaces the file, or what it links to; the old text stays beside it as {@code .bak}. What
   * earlier saves of this file left behind when the program died in them is cleared away.
   */
  public static void replace(Path file, String text) throws IOException {
    boolean exists = Files.exists(file);
    Path target = exists ? file.toRealPath() : file.toAbsolutePath();
    Path fresh = sibling(target);
    try {
      store(fresh, text);
      if (exists) {
        copyPermissions(target, fresh);
        keep(target);
      }
      moveOver(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
    clearAway(target);
  }

  /**
   * The file is saved by now: that something else can't be cleared away must not look otherwise.
   */
  private static void clearAway(Path target) {
    Pattern left = Pattern.compile(Pattern.quote(target.getFileName() + ".") + UNIQUE + "\\.new");
    Instant before = Instant.now().minus(LEFT_BEHIND);
    try (Stream<Path> all = Files.list(target.resolveSibling("."))) {
      for (Path other :
          all.filter(f -> left.matcher(f.getFileName().toString()).matches()).toList()) {
        if (Files.getLastModifiedTime(other).toInstant().isBefore(before)) {
          Files.deleteIfExists(other);
        }
      }
    } catch (IOException | UncheckedIOException stays) {
      // It is tried again with the next save.
    }
  }

  private static Path sibling(Path target) {
    return target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ".new");
  }

  private static void store(Path file, String text) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static void copyPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    if (old != null) {
      Files.setPosixFilePermissions(to, old.readAttributes().permissions());
    }
  }

  /** Copies the old file aside by way of a third, so that the last copy stays whole as well. */
  private static void keep(Path target) throws IOException {
    Path copy = sibling(target);
    try {
      Files.copy(target, copy, StandardCopyOption.COPY_ATTRIBUTES);
      moveOver(copy, target.resolveSibling(target.getFileName() + ".bak"));
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  private static void moveOver(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
