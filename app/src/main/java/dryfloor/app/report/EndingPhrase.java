package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;

/** How it ended, for a cell of a table. */
final class EndingPhrase {

  /** An event this much later (s) is not at the same time. */
  private static final double AFTERWARDS = 1;

  /** How close to its end a level is that is as good as still (m), as the analysis has it. */
  private static final double STILL = 1e-3;

  private EndingPhrase() {}

  static String of(Wording wording, Outcome outcome) {
    Amounts amounts = wording.amounts();
    return switch (outcome.ending()) {
      case Ending.AtRest rest ->
          "levels within "
              + amounts.level(STILL)
              + " of their end after "
              + amounts.time(rest.time())
              + later(amounts, rest.time(), outcome);
      case Ending.Repeats repeats ->
          "repeats itself every "
              + amounts.time(repeats.period())
              + ", from "
              + amounts.time(repeats.since())
              + " on";
      case Ending.Continues continues ->
          "goes on at "
              + amounts.hourlyFlow(continues.rate())
              + ", steady from "
              + amounts.time(Math.max(continues.since(), lastEvent(outcome)))
              + " on";
      case Ending.StillMoving moving ->
          wording.names().the(moving.place()) + " still moves after " + amounts.time(moving.time());
      case Ending.UpAndDown swinging ->
          wording.names().the(swinging.place())
              + " goes up and down every "
              + amounts.time(swinging.period());
    };
  }

  /** The levels may be as good as still while something that hardly moves them goes on. */
  private static String later(Amounts amounts, double time, Outcome outcome) {
    double last = lastEvent(outcome);
    return last > time + AFTERWARDS ? "; last event told at " + amounts.time(last) : "";
  }

  private static double lastEvent(Outcome outcome) {
    return outcome.story().stream().mapToDouble(StoryEvent::time).max().orElse(0);
  }
}
