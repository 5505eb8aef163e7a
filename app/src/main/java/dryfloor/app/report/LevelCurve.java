package dryfloor.app.report;

import dryfloor.analysis.outcome.Trajectory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The level of a vessel over time, in no more points than can be told apart: of all moments that
 * fall into one slot of the scale only the first, the lowest, the highest and the last count. A
 * pump that cycles for days then shows as the band in which the level moves.
 */
public final class LevelCurve {

  private LevelCurve() {}

  /**
   * A point of the curve.
   *
   * @param share of the scale, 0 to 1
   * @param level elevation (m)
   */
  public record Spot(double share, double level) {}

  /** A straight line in time is bent on the scale: so many pieces show it well enough. */
  private static final int PIECES = 40;

  /**
   * The curve of a place.
   *
   * @param slots how many the scale is cut into, at least 1
   */
  public static List<Spot> of(Trajectory trajectory, String place, TimeScale scale, int slots) {
    List<Spot> spots = new ArrayList<>();
    for (int moment = 0; moment < trajectory.moments(); moment++) {
      Spot spot = new Spot(scale.share(trajectory.time(moment)), trajectory.level(moment, place));
      if (!spots.isEmpty()) {
        spots.addAll(between(spots.getLast(), spot, trajectory, place, scale, slots));
      }
      spots.add(spot);
    }
    List<Spot> curve = thinned(spots, slots);
    curve.add(new Spot(1, spots.getLast().level()));
    return curve;
  }

  private static List<Spot> between(
      Spot from, Spot to, Trajectory trajectory, String place, TimeScale scale, int slots) {
    int pieces = Math.min(slot(to, slots) - slot(from, slots), PIECES);
    return IntStream.range(1, pieces)
        .mapToDouble(i -> from.share() + (to.share() - from.share()) * i / pieces)
        .mapToObj(share -> new Spot(share, trajectory.levelAt(scale.time(share), place)))
        .toList();
  }

  private static List<Spot> thinned(List<Spot> spots, int slots) {
    List<Spot> curve = new ArrayList<>();
    List<Spot> slot = new ArrayList<>();
    for (Spot spot : spots) {
      if (!slot.isEmpty() && slot(spot, slots) != slot(slot.getFirst(), slots)) {
        flush(slot, curve);
      }
      slot.add(spot);
    }
    flush(slot, curve);
    return curve;
  }

  private static int slot(Spot spot, int slots) {
    return (int) Math.floor(spot.share() * slots);
  }

  private static void flush(List<Spot> slot, List<Spot> curve) {
    Spot lowest = slot.stream().min(Comparator.comparingDouble(Spot::level)).orElseThrow();
    Spot highest = slot.stream().max(Comparator.comparingDouble(Spot::level)).orElseThrow();
    curve.add(slot.getFirst());
    if (slot.size() > 2) {
      boolean lowFirst = slot.indexOf(lowest) <= slot.indexOf(highest);
      curve.add(lowFirst ? lowest : highest);
      curve.add(lowFirst ? highest : lowest);
    }
    if (slot.size() > 1) {
      curve.add(slot.getLast());
    }
    slot.clear();
  }
}
