package dryfloor.app.view.file;

import java.util.Optional;

/**
 * What the program remembers between two starts.
 *
 * @param recent files
 * @param window the one that was closed last; none at the first start
 * @param appearance none where nobody has changed it
 */
public record Settings(
    RecentFiles recent, Optional<WindowState> window, Optional<Appearance> appearance) {

  /** Of a first start. */
  public static final Settings FIRST =
      new Settings(RecentFiles.NONE, Optional.empty(), Optional.empty());

  /** The same with other recent files. */
  public Settings with(RecentFiles other) {
    return new Settings(other, window, appearance);
  }

  /** The same with another window. */
  public Settings with(WindowState other) {
    return new Settings(recent, Optional.of(other), appearance);
  }

  /** The same with other looks. */
  public Settings with(Appearance other) {
    return new Settings(recent, window, Optional.of(other));
  }
}
