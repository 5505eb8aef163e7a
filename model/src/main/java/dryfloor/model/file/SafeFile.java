package dryfloor.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Replaces a file so that, whenever the program dies, the old or the new text is whole on disk. */
final class SafeFile {

  private SafeFile() {}

  static void replace(Path file, String text) throws IOException {
    Path target = file.toAbsolutePath();
    Path fresh = Files.createTempFile(folderOf(target), target.getFileName() + ".", ".new");
    try {
      store(fresh, text);
      if (Files.exists(target)) {
        keep(target);
      }
      Files.move(
          fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static Path folderOf(Path target) throws IOException {
    Path folder = target.getParent();
    if (folder == null) {
      throw new IOException(target + " is no file; name a file in a folder");
    }
    return folder;
  }

  private static void store(Path file, String text) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  /** Copies the old file aside by way of a third, so that the last copy stays whole as well. */
  private static void keep(Path target) throws IOException {
    Path copy = Files.createTempFile(folderOf(target), target.getFileName() + ".", ".new");
    try {
      Files.copy(target, copy, StandardCopyOption.REPLACE_EXISTING);
      Files.move(
          copy,
          target.resolveSibling(target.getFileName() + ".bak"),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(copy);
    }
  }
}
