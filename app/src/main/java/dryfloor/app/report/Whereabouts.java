package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
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
      case WET -> onFloors(wording, outcome) + goesOn(wording, outcome.ending());
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

  /** Wettest first; a floor that most of its water has left again is told by what passed. */
  private static String onFloors(Wording wording, Outcome outcome) {
    List<String> phrases =
        outcome.floors().stream()
            .filter(floor -> wording.amounts().isWater(floor.received()))
            .sorted(Comparator.comparingDouble(Outcome.FloorOutcome::received).reversed())
            .map(floor -> onFloor(wording, floor))
            .toList();
    return some(phrases);
  }

  private static String onFloor(Wording wording, Outcome.FloorOutcome floor) {
    boolean passed = floor.volume() < floor.received() / 2;
    return wording.amounts().volume(passed ? floor.received() : floor.volume())
        + (passed ? " over " : " ")
        + wording.names().small(floor.id());
  }

  private static String goesOn(Wording wording, Ending ending) {
    return ending instanceof Ending.Continues continues
        ? ", goes on at " + wording.amounts().hourlyFlow(continues.rate())
        : "";
  }

  private static List<Outcome.Passed> mostFirst(Wording wording, Stream<Outcome.Passed> places) {
    return places
        .filter(place -> place.volume() > 0 && wording.amounts().isWater(place.volume()))
        .sorted(Comparator.comparingDouble(Outcome.Passed::volume).reversed())
        .toList();
  }

  private static String named(Wording wording, List<Outcome.Passed> places) {
    return some(
        places.stream()
            .map(
                place ->
                    wording.amounts().volume(place.volume())
                        + " "
                        + wording.names().small(place.id()))
            .toList());
  }

  private static String some(List<String> phrases) {
    int unnamed = phrases.size() - PLACES_NAMED;
    return String.join(", ", phrases.subList(0, Math.min(PLACES_NAMED, phrases.size())))
        + (unnamed > 0 ? " and " + unnamed + " more" : "");
  }

  private static boolean isBasin(Wording wording, String id) {
    return wording.installation().vessels().stream()
        .anyMatch(vessel -> vessel.id().equals(id) && vessel.isBasin());
  }
}
