package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The answer in a sentence or two that the owner of the building understands aloud. */
public final class VerdictSentence {

  /** Nobody has time to act within this (s). */
  static final double AT_ONCE = 1;

  /** Less than half a millimetre (m) of water is no depth. */
  static final double FILM = 5e-4;

  /** A margin below this (m) is less than drawings and buildings keep to (common practice). */
  static final double TOO_CLOSE = 5e-3;

  private static final double AN_HOUR = 3600;
  private static final double MILLIMETRE = 1e-3;

  /** A change of level that shows in an hour (m). */
  private static final double SHOWS = 2e-3;

  private final Wording wording;

  /** Sentences about this installation. */
  public VerdictSentence(Wording wording) {
    this.wording = wording;
  }

  /** Verdict, what it means in water, and whether it goes on. */
  public String of(Outcome outcome) {
    return Answer.of(outcome).word() + ": " + explanation(outcome);
  }

  /** What the verdict means in water, and whether it goes on; to follow on a colon. */
  public String explanation(Outcome outcome) {
    String explanation =
        switch (outcome.verdict()) {
          case WET -> wet(outcome);
          case CAUGHT -> caught(outcome);
          case DRY -> "nothing leaves its vessel. " + closest(outcome);
        };
    return (explanation + goesOn(outcome)).strip();
  }

  private String wet(Outcome outcome) {
    List<String> floors =
        Whereabouts.reached(wording, outcome).stream()
            .sorted(Comparator.comparingDouble(floor -> floor.firstWet().orElse(Double.MAX_VALUE)))
            .map(floor -> floor(outcome, floor))
            .toList();
    String first =
        outcome.firstWetFloor().isPresent()
            ? ", the first " + first(outcome.firstWetFloor().getAsDouble())
            : "";
    String beyond =
        amounts().isWorthTelling(outcome.beyond())
            ? " " + amounts().volume(outcome.beyond()) + " of it run on beyond the drawing."
            : "";
    return (floors.isEmpty() ? "water runs beyond the drawing" : Sentences.enumerate(floors))
        + first
        + "."
        + beyond;
  }

  /** Whether all of a floor's water came over the sill of another. */
  static boolean runsOnTo(Outcome outcome, String floor) {
    return outcome.ledger().entries().stream()
            .anyMatch(e -> e.to().equals(floor) && e.way() == Ledger.Way.SILL)
        && outcome.ledger().entries().stream()
            .noneMatch(e -> e.to().equals(floor) && e.way() != Ledger.Way.SILL);
  }

  private String first(double time) {
    return time < AT_ONCE ? "at once" : "after " + amounts().time(time);
  }

  /**
   * What reached a floor and what became of it there: a floor that most of its water has left again
   * is run over, and says by which way, so that nobody takes all of it for water that stands.
   */
  private String floor(Outcome outcome, Outcome.FloorOutcome floor) {
    boolean passes = floor.volume() < floor.received() / 2;
    Optional<String> leaves = new Departures(wording, outcome).from(floor);
    String reaches = passes && leaves.isPresent() ? " run over " : " reach ";
    return amounts().volume(floor.received())
        + (runsOnTo(outcome, floor.id()) ? " of it run on to " : reaches)
        + wording.names().the(floor.id())
        + stands(floor, passes, leaves);
  }

  private String stands(Outcome.FloorOutcome floor, boolean passes, Optional<String> leaves) {
    if (floor.depth() < FILM) {
      return leaves
          .map(words -> " (" + words + ")")
          .orElse(passes ? " and mostly leave it again" : " (a thin film)");
    }
    return " ("
        + amounts().level(floor.depth())
        + " deep"
        + leaves.map(words -> " at the end; " + words).orElse("")
        + ")";
  }

  private String caught(Outcome outcome) {
    List<String> takers =
        Whereabouts.catches(wording, outcome).stream()
            .map(taken -> wording.names().the(taken.id()) + takes(taken))
            .toList();
    String what =
        takers.isEmpty()
            ? "what leaves its vessel is caught and has run off"
            : Sentences.enumerate(takers);
    return what + ". No floor gets wet.";
  }

  /** A drain takes, a basin holds. */
  private String takes(Outcome.Passed taken) {
    boolean basin = Whereabouts.isBasin(wording, taken.id());
    return (basin ? " holds " : " takes ") + amounts().volume(taken.volume());
  }

  private String closest(Outcome outcome) {
    Outcome.Margin margin = outcome.margin();
    return margin.vessel().stream()
        .map(
            vessel ->
                closest(margin, vessel)
                    + (margin.freeboard() < TOO_CLOSE
                        ? " That is too close to rely on: no drawing and no building is that exact."
                        : ""))
        .findFirst()
        .orElse("");
  }

  /** Where no level comes closer to a rim than the one that is closest anyway, that is told. */
  private String closest(Outcome.Margin margin, String vessel) {
    String left = amounts().level(margin.freeboard()) + " below ";
    return margin.time() < AT_ONCE
        ? "No level comes closer to a rim than that of "
            + wording.names().the(vessel)
            + " at the start: "
            + left
            + "it."
        : wording.names().theAtStart(vessel)
            + " comes closest: "
            + left
            + "its rim after "
            + amounts().time(margin.time())
            + ".";
  }

  private String goesOn(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.Continues continues -> continues(continues, outcome.ledger().until());
      case Ending.Repeats repeats ->
          " From then on it repeats itself every " + amounts().time(repeats.period()) + ".";
      case Ending.StillMoving moving -> moves(moving);
      case Ending.UpAndDown swinging ->
          " It does not come to rest: "
              + wording.names().the(swinging.place())
              + " goes up and down by "
              + amounts().level(swinging.highest() - swinging.lowest())
              + ", about every "
              + amounts().time(swinging.period())
              + ".";
      case Ending.AtRest rest -> "";
    };
  }

  private String moves(Ending.StillMoving moving) {
    return " It has not come to rest after "
        + amounts().time(moving.time())
        + ": "
        + wording.names().the(moving.place())
        + (moving.speed() > 0 ? " still rises by " : " still falls by ")
        + speed(Math.abs(moving.speed()))
        + "; these are the amounts so far.";
  }

  /** By the hour, or by the day where an hour does not show. */
  private String speed(double speed) {
    double anHour = speed * AN_HOUR;
    return anHour < SHOWS
        ? amounts().level(Math.max(anHour * 24, MILLIMETRE)) + " a day"
        : amounts().level(anHour) + " an hour";
  }

  private String continues(Ending.Continues continues, double until) {
    return " It goes on at "
        + amounts().hourlyFlow(continues.rate())
        + " until somebody comes; these are the amounts after "
        + amounts().hours(until)
        + ".";
  }

  private Amounts amounts() {
    return wording.amounts();
  }
}
