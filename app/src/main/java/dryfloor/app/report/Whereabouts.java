package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Where the water ended up, in the few words that a line of a table has room for. */
final class Whereabouts {

  private static final int PLACES_NAMED = 2;

  private Whereabouts() {}

  /** "34 L cellar floor, 5 L beyond the drawing"; what was caught; or that nothing left. */
  static String of(Wording wording, Outcome outcome) {
    return switch (outcome.verdict()) {
      case WET -> named(wording, onFloors(wording, outcome));
      case CAUGHT -> named(wording, catches(wording, outcome));
      case DRY -> "all in its vessels";
    };
  }

  /** "sump 12 mm left", or how far above its rim it stood. */
  static String margin(Wording wording, Outcome outcome) {
    Outcome.Margin margin = outcome.margin();
    if (margin.vessel().isEmpty()) {
      return "";
    }
    String vessel = wording.names().small(margin.vessel().get());
    return margin.freeboard() > 0
        ? vessel + " " + wording.amounts().level(margin.freeboard()) + " left"
        : vessel + " over its rim";
  }

  /** When it matters: the first wet floor, the first spill, or the highest level. */
  static String time(Wording wording, Outcome outcome) {
    double time =
        outcome.firstWetFloor().orElse(outcome.firstSpill().orElse(outcome.margin().time()));
    return wording.amounts().time(time);
  }

  /** What basins gained and drains took, most first. */
  static List<Outcome.Passed> catches(Wording wording, Outcome outcome) {
    Stream<Outcome.Passed> basins =
        outcome.vessels().stream()
            .filter(vessel -> isBasin(wording, vessel.id()))
            .map(v -> new Outcome.Passed(v.id(), v.volumeAfter() - v.volumeBefore()));
    return mostFirst(wording, Stream.concat(basins, outcome.drained().stream()));
  }

  private static List<Outcome.Passed> onFloors(Wording wording, Outcome outcome) {
    return mostFirst(
        wording,
        outcome.floors().stream().map(floor -> new Outcome.Passed(floor.id(), floor.received())));
  }

  private static List<Outcome.Passed> mostFirst(Wording wording, Stream<Outcome.Passed> places) {
    return places
        .filter(place -> place.volume() > 0 && wording.amounts().isWater(place.volume()))
        .sorted(Comparator.comparingDouble(Outcome.Passed::volume).reversed())
        .toList();
  }

  private static String named(Wording wording, List<Outcome.Passed> places) {
    List<String> phrases =
        places.stream()
            .limit(PLACES_NAMED)
            .map(
                place ->
                    wording.amounts().volume(place.volume())
                        + " "
                        + wording.names().small(place.id()))
            .toList();
    int unnamed = places.size() - phrases.size();
    return String.join(", ", phrases) + (unnamed > 0 ? " and " + unnamed + " more" : "");
  }

  private static boolean isBasin(Wording wording, String id) {
    return wording.installation().vessels().stream()
        .anyMatch(vessel -> vessel.id().equals(id) && vessel.isBasin());
  }
}
