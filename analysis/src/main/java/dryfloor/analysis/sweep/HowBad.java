package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;

/**
 * How bad a result is, as far as it decides what comes first: no answer before any answer, then the
 * verdict, then water on floors, then water that does not stop, then the margin.
 *
 * @param group 0 for no answer, then by verdict, the worst first
 * @param reachedFloors water that reached floors (m³)
 * @param rate at which it goes on (m³/s)
 * @param freeboard the least that is left (m)
 */
public record HowBad(int group, double reachedFloors, double rate, double freeboard)
    implements Comparable<HowBad> {

  private static final Comparator<HowBad> WORST_FIRST =
      Comparator.comparingInt(HowBad::group)
          .thenComparingDouble(bad -> -bad.reachedFloors)
          .thenComparingDouble(bad -> -bad.rate)
          .thenComparingDouble(HowBad::freeboard);

  static HowBad of(FailureResult result) {
    return switch (result) {
      case FailureResult.Unanswered unanswered -> new HowBad(0, 0, 0, 0);
      case FailureResult.Answered answered -> of(answered.outcome());
      case FailureResult.Skipped skipped -> new HowBad(4, 0, 0, 0);
    };
  }

  /** How bad an answer is. */
  public static HowBad of(Outcome outcome) {
    int group =
        switch (outcome.verdict()) {
          case WET -> 1;
          case CAUGHT -> 2;
          case DRY -> 3;
        };
    return new HowBad(group, outcome.reachedFloors(), rate(outcome), outcome.margin().freeboard());
  }

  private static double rate(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.Continues continues -> continues.rate();
      case Ending.AtRest rest -> 0;
      case Ending.Repeats repeats -> 0;
      case Ending.StillMoving moving -> 0;
      case Ending.UpAndDown swinging -> 0;
    };
  }

  /** The worst comes first. */
  @Override
  public int compareTo(HowBad other) {
    return WORST_FIRST.compare(this, other);
  }
}
