package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;

/**
 * Which of two results is worse: no answer before any answer, then the verdict, then water on
 * floors, then water that does not stop, then the margin. Equal ones keep the order of the list.
 */
final class WorstFirst {

  static final Comparator<FailureResult> ORDER =
      Comparator.comparingInt(WorstFirst::group)
          .thenComparingDouble(result -> -number(result, Outcome::reachedFloors))
          .thenComparingDouble(result -> -number(result, WorstFirst::rate))
          .thenComparingDouble(result -> number(result, outcome -> outcome.margin().freeboard()));

  private WorstFirst() {}

  private static int group(FailureResult result) {
    return switch (result) {
      case FailureResult.Unanswered unanswered -> 0;
      case FailureResult.Answered answered ->
          switch (answered.outcome().verdict()) {
            case WET -> 1;
            case CAUGHT -> 2;
            case DRY -> 3;
          };
      case FailureResult.Skipped skipped -> 4;
    };
  }

  private static double number(FailureResult result, OutcomeNumber number) {
    return switch (result) {
      case FailureResult.Answered answered -> number.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> 0;
      case FailureResult.Skipped skipped -> 0;
    };
  }

  private static double rate(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.Continues continues -> continues.rate();
      case Ending.AtRest rest -> 0;
      case Ending.Repeats repeats -> 0;
      case Ending.StillMoving moving -> 0;
    };
  }

  /** A number of an outcome. */
  private interface OutcomeNumber {
    double of(Outcome outcome);
  }
}
