package dryfloor.app.view.file;

import dryfloor.app.view.learn.Scores;
import java.util.Optional;

/**
 * What the program remembers between two starts.
 *
 * @param recent files
 * @param window the one that was closed last; none at the first start
 * @param appearance none where nobody has changed it
 * @param scores of the sets of exercises that were tried
 */
public record Settings(
    RecentFiles recent,
    Optional<WindowState> window,
    Optional<Appearance> appearance,
    Scores scores) {

  /** Of a first start. */
  public static final Settings FIRST =
      new Settings(RecentFiles.NONE, Optional.empty(), Optional.empty(), Scores.NONE);

  /** The same with other recent files. */
  public Settings with(RecentFiles other) {
    return new Settings(other, window, appearance, scores);
  }

  /** The same with another window. */
  public Settings with(WindowState other) {
    return new Settings(recent, Optional.of(other), appearance, scores);
  }

  /** The same with other looks. */
  public Settings with(Appearance other) {
    return new Settings(recent, window, Optional.of(other), scores);
  }

  /** The same with other scores. */
  public Settings with(Scores other) {
    return new Settings(recent, window, appearance, other);
  }
}
