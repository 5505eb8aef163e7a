package dryfloor.app.view.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Files that were opened or saved, the last one first.
 *
 * @param paths at most {@link #MOST}, none twice
 */
public record RecentFiles(List<Path> paths) {

  /** More than these nobody looks through. */
  public static final int MOST = 10;

  /** No file yet. */
  public static final RecentFiles NONE = new RecentFiles(List.of());

  public RecentFiles {
    paths = paths.stream().distinct().limit(MOST).toList();
  }

  /** This one first. */
  public RecentFiles with(Path path) {
    Path file = path.toAbsolutePath().normalize();
    return new RecentFiles(
        Stream.concat(Stream.of(file), paths.stream().filter(other -> !other.equals(file)))
            .toList());
  }

  /** The file that was worked on last. */
  public Optional<Path> last() {
    return paths.stream().findFirst();
  }
}
