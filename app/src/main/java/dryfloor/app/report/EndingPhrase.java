package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;

/** How it ended, for a cell of a table. */
final class EndingPhrase {

  private EndingPhrase() {}

  static String of(Wording wording, Ending ending) {
    Amounts amounts = wording.amounts();
    return switch (ending) {
      case Ending.AtRest rest -> "at rest after " + amounts.time(rest.time());
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
              + amounts.time(continues.since())
              + " on";
      case Ending.UpAndDown swinging ->
          wording.names().the(swinging.place())
              + " goes up and down every "
              + amounts.time(swinging.period());
      case Ending.StillMoving moving ->
          wording.names().the(moving.place()) + " still moves after " + amounts.time(moving.time());
    };
  }
}
