package dryfloor.app.drawing;

import java.util.HashMap;
import java.util.Map;

/** Hands out places for upright pipes, so that no two run in the same line. */
final class Channels {

  private final double spacing;
  private final Map<String, Integer> taken = new HashMap<>();

  /**
   * None handed out yet.
   *
   * @param spacing between pipes beside a station (m)
   */
  Channels(double spacing) {
    this.spacing = spacing;
  }

  /** The next place beside a station. */
  double beside(Station station, double left, boolean onTheRight) {
    int number = next(station.key() + (onTheRight ? ">" : "<"));
    double away = (number + 1) * spacing;
    return onTheRight ? left + station.width() + away : left - away;
  }

  /** The next place inside a vessel, from one of its walls on. */
  double inside(Tank tank, boolean onTheRight) {
    int number = next(tank.id() + (onTheRight ? "]" : "["));
    double away = Math.min((number + 1) * Stations.PIPE_SPACING, tank.width() * 0.45);
    return onTheRight ? tank.right() - away : tank.left() + away;
  }

  /** The next height under a ceiling. */
  double under(String storey, double ceiling) {
    return ceiling - (next("_" + storey) + 1) * Stations.PIPE_SPACING;
  }

  private int next(String place) {
    return taken.merge(place, 1, Integer::sum) - 1;
  }
}
