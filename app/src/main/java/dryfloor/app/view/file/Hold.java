package dryfloor.app.view.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A hold on something, by a locked file. The system lets go of it when the program dies, however it
 * dies, so that a hold that can be taken belongs to nobody who lives.
 */
final class Hold implements AutoCloseable {

  private final FileChannel channel;

  private Hold(FileChannel channel) {
    this.channel = channel;
  }

  /** Takes hold; nothing where somebody else has it, in this program or another. */
  static Optional<Hold> take(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return Optional.of(new Hold(channel));
      }
    } catch (OverlappingFileLockException ours) {
      // Held by this very program.
    }
    channel.close();
    return Optional.empty();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
