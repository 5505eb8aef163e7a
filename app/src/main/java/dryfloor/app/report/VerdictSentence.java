package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;
import java.util.List;

/** The answer in a sentence or two that the owner of the building understands aloud. */
public final class VerdictSentence {

  /** Nobody has time to act within this (s). */
  private static final double AT_ONCE = 1;

  /** A change of level that shows in an hour (m). */
  private static final double SHOWS = 2e-3;

  private final Wording wording;

  /** Sentences about this installation. */
  public VerdictSentence(Wording wording) {
    this.wording = wording;
  }

  /** Verdict, what it means in water, and whether it goes on. */
  public String of(Outcome outcome) {
    String verdict =
        switch (outcome.verdict()) {
          case WET -> "WET: " + wet(outcome);
          case CAUGHT -> "CAUGHT: " + caught(outcome);
          case DRY -> "DRY: nothing leaves its vessel. " + closest(outcome);
        };
    return (verdict + goesOn(outcome)).strip();
  }

  private String wet(Outcome outcome) {
    List<String> floors =
        outcome.floors().stream()
            .filter(floor -> floor.received() > 0 || floor.firstWet().isPresent())
            .sorted(Comparator.comparingDouble(floor -> floor.firstWet().orElse(Double.MAX_VALUE)))
            .map(floor -> floor(floor, runsOnTo(outcome, floor.id())))
            .toList();
    String first =
        outcome.firstWetFloor().isPresent()
            ? ", " + first(outcome.firstWetFloor().getAsDouble())
            : "";
    String beyond =
        outcome.beyond() > 0
            ? " " + amounts().volume(outcome.beyond()) + " of it run on beyond the drawing."
            : "";
    return (floors.isEmpty() ? "a floor gets water" : Sentences.enumerate(floors))
        + first
        + "."
        + beyond;
  }

  /** Whether all of a floor's water came over the sill of another. */
  private static boolean runsOnTo(Outcome outcome, String floor) {
    return outcome.ledger().entries().stream()
            .anyMatch(e -> e.to().equals(floor) && e.way() == Ledger.Way.SILL)
        && outcome.ledger().entries().stream()
            .noneMatch(e -> e.to().equals(floor) && e.way() != Ledger.Way.SILL);
  }

  private String first(double time) {
    return time < AT_ONCE ? "at once" : "first after " + amounts().time(time);
  }

  private String floor(Outcome.FloorOutcome floor, boolean fromOtherFloor) {
    String depth =
        floor.depth() >= 5e-4
            ? ", " + amounts().level(floor.depth()) + " deep"
            : floor.volume() < floor.received() / 2 ? " and run off again" : ", a thin film";
    return amounts().volume(floor.received())
        + (fromOtherFloor ? " run on to " : " reach ")
        + wording.names().the(floor.id())
        + depth;
  }

  private String caught(Outcome outcome) {
    List<String> takers =
        Whereabouts.catches(wording, outcome).stream()
            .map(
                taken ->
                    wording.names().the(taken.id()) + " takes " + amounts().volume(taken.volume()))
            .toList();
    String what =
        takers.isEmpty()
            ? "what leaves its vessel is caught and has run off"
            : Sentences.enumerate(takers);
    return what + ". No floor gets wet.";
  }

  private String closest(Outcome outcome) {
    Outcome.Margin margin = outcome.margin();
    return margin.vessel().stream()
        .map(
            vessel ->
                wording.names().theAtStart(vessel)
                    + " comes closest: "
                    + amounts().level(margin.freeboard())
                    + " below its rim"
                    + (margin.time() > 0 ? " after " + amounts().time(margin.time()) : "")
                    + ".")
        .findFirst()
        .orElse("");
  }

  private String goesOn(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.Continues continues -> continues(continues, outcome.ledger().until());
      case Ending.Repeats repeats ->
          " It repeats itself every " + amounts().time(repeats.period()) + " from then on.";
      case Ending.StillMoving moving ->
          " It has not come to rest after "
              + amounts().time(moving.time())
              + ": "
              + wording.names().the(moving.place())
              + (moving.speed() > 0 ? " still rises" : " still falls")
              + " by "
              + speed(Math.abs(moving.speed()))
              + ".";
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

  /** By the hour, or by the day where an hour does not show. */
  private String speed(double speed) {
    double anHour = speed * 3600;
    return anHour < SHOWS
        ? amounts().level(anHour * 24) + " a day"
        : amounts().level(anHour) + " an hour";
  }

  private String continues(Ending.Continues continues, double until) {
    return " It goes on at "
        + amounts().hourlyFlow(continues.rate())
        + " until somebody comes; this is how much it is after "
        + amounts().hours(until)
        + ".";
  }

  private Amounts amounts() {
    return wording.amounts();
  }
}
