package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Where the water ended up, in the few words that a line of a table has room for. */
public final class Whereabouts {

  private static final int PLACES_NAMED = 2;

  private Whereabouts() {}

  /** "34 L on cellar floor, 5 L across hall floor"; what was caught; or that nothing left. */
  public static String of(Wording wording, Outcome outcome) {
    return switch (outcome.verdict()) {
      case WET -> onFloors(wording, outcome) + goesOn(wording, outcome.ending());
      case CAUGHT -> caught(wording, outcome) + goesOn(wording, outcome.ending());
      case DRY -> "all in its vessels" + goesOn(wording, outcome.ending());
    };
  }

  /**
   * "sump 12 mm left", or that it ran over; the vessel that is closest to its rim when all is well
   * is not named again where nothing came closer. Where a floor got wet by another way than a rim,
   * no margin would mean anything.
   */
  public static String margin(Wording wording, Outcome outcome, Outcome normal) {
    Outcome.Margin margin = outcome.margin();
    if (margin.vessel().isEmpty()) {
      return "";
    }
    if (isAsNormal(outcome, normal)) {
      return switch (outcome.verdict()) {
        case WET -> "";
        case CAUGHT, DRY -> "as normal";
      };
    }
    String vessel = wording.names().small(margin.vessel().get());
    return margin.freeboard() > 0
        ? vessel
            + " "
            + wording.amounts().level(margin.freeboard())
            + " left"
            + (margin.freeboard() < VerdictSentence.TOO_CLOSE ? ", too close" : "")
        : vessel + " over its rim";
  }

  private static boolean isAsNormal(Outcome outcome, Outcome normal) {
    Outcome.Margin margin = outcome.margin();
    return margin.vessel().equals(normal.margin().vessel())
        && margin.freeboard() > normal.margin().freeboard() - VerdictSentence.FILM;
  }

  /** When it matters; nothing where nothing left its vessel and no level came closer to a rim. */
  public static String when(Wording wording, Outcome outcome, Outcome normal) {
    boolean leaves =
        switch (outcome.verdict()) {
          case WET, CAUGHT -> true;
          case DRY -> false;
        };
    return leaves || !isAsNormal(outcome, normal) ? time(wording, outcome) : "";
  }

  /** When it matters: the first wet floor, the first spill, or the highest level. */
  private static String time(Wording wording, Outcome outcome) {
    double time =
        outcome.firstWetFloor().orElse(outcome.firstSpill().orElse(outcome.margin().time()));
    return time < VerdictSentence.AT_ONCE ? "at once" : wording.amounts().time(time);
  }

  /** What basins hold and drains took, most first; dribbles only where there is no more. */
  static List<Outcome.Passed> catches(Wording wording, Outcome outcome) {
    Stream<Outcome.Passed> basins =
        outcome.vessels().stream()
            .filter(vessel -> isBasin(wording, vessel.id()))
            .map(v -> new Outcome.Passed(v.id(), v.volumeAfter() - v.volumeBefore()));
    return telling(
        wording,
        Stream.concat(basins, outcome.drained().stream())
            .filter(place -> place.volume() > 0 && wording.amounts().isWater(place.volume()))
            .sorted(Comparator.comparingDouble(Outcome.Passed::volume).reversed())
            .toList(),
        Outcome.Passed::volume);
  }

  /** The floors that got water, most first; dribbles only where there is no more. */
  static List<Outcome.FloorOutcome> reached(Wording wording, Outcome outcome) {
    return telling(
        wording,
        outcome.floors().stream()
            .filter(floor -> floor.received() > 0 || floor.firstWet().isPresent())
            .sorted(Comparator.comparingDouble(Outcome.FloorOutcome::received).reversed())
            .toList(),
        Outcome.FloorOutcome::received);
  }

  /** What is worth telling, else what is water at all, else everything. */
  private static <P> List<P> telling(Wording wording, List<P> places, ToDoubleFunction<P> volume) {
    List<P> worth = where(places, p -> wording.amounts().isWorthTelling(volume.applyAsDouble(p)));
    List<P> water = where(places, p -> wording.amounts().isWater(volume.applyAsDouble(p)));
    return worth.isEmpty() ? (water.isEmpty() ? places : water) : worth;
  }

  private static <P> List<P> where(List<P> places, Predicate<P> condition) {
    return places.stream().filter(condition).toList();
  }

  /** Wettest first; a floor that most of its water has left again is told by what passed. */
  private static String onFloors(Wording wording, Outcome outcome) {
    List<String> phrases =
        reached(wording, outcome).stream()
            .map(floor -> onFloor(wording, floor, VerdictSentence.runsOnTo(outcome, floor.id())))
            .toList();
    return phrases.isEmpty()
        ? wording.amounts().volume(outcome.beyond()) + " ran beyond the drawing"
        : some(phrases);
  }

  private static String onFloor(
      Wording wording, Outcome.FloorOutcome floor, boolean fromOtherFloor) {
    boolean passed = floor.volume() < floor.received() / 2;
    return (fromOtherFloor && passed ? "of it " : "")
        + wording.amounts().volume(passed ? floor.received() : floor.volume())
        + (passed ? " across " : " on ")
        + wording.names().small(floor.id());
  }

  private static String caught(Wording wording, Outcome outcome) {
    return some(
        catches(wording, outcome).stream()
            .map(
                place ->
                    wording.amounts().volume(place.volume())
                        + (isBasin(wording, place.id()) ? " in " : " to ")
                        + wording.names().small(place.id()))
            .toList());
  }

  static String goesOn(Wording wording, Ending ending) {
    return switch (ending) {
      case Ending.Continues continues ->
          ", goes on at " + wording.amounts().hourlyFlow(continues.rate());
      case Ending.StillMoving moving ->
          " so far, still moving after " + wording.amounts().hours(moving.time());
      case Ending.AtRest rest -> "";
      case Ending.Repeats repeats -> "";
      case Ending.UpAndDown swinging -> "";
    };
  }

  private static String some(List<String> phrases) {
    int unnamed = phrases.size() - PLACES_NAMED;
    return String.join(", ", phrases.subList(0, Math.min(PLACES_NAMED, phrases.size())))
        + (unnamed > 0 ? " and " + unnamed + " more" : "");
  }

  static boolean isBasin(Wording wording, String id) {
    return wording.installation().vessels().stream()
        .anyMatch(vessel -> vessel.id().equals(id) && vessel.isBasin());
  }
}
