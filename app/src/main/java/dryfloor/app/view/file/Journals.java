package dryfloor.app.view.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** The folder with the journals of all windows of all programs of this user. */
public final class Journals {

  private final Path folder;

  /** Journals in this folder, which is made when needed. */
  public Journals(Path folder) {
    this.folder = folder;
  }

  /** A journal for a new window. */
  public Journal begin() throws IOException {
    Files.createDirectories(folder);
    return Journal.take(folder, UUID.randomUUID().toString())
        .orElseThrow(() -> new IOException("somebody holds a journal that is not there yet"));
  }

  /** What programs that died have left behind; held from now on by this one. */
  public List<Journal> leftBehind() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Journal> left = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(Journal.ENDING)) {
          String id = name.substring(0, name.length() - Journal.ENDING.length());
          Journal.take(folder, id).ifPresent(left::add);
        }
      }
    }
    return left;
  }
}
