package dryfloor.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/** Replaces a file so that, whenever the program dies, the old or the new text is whole on disk. */
final class SafeFile {

  private SafeFile() {}

  /** Replaces the file, or what it links to; the old text stays beside it as {@code .bak}. */
  static void replace(Path file, String text) throws IOException {
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
