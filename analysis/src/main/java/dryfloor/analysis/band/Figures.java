package dryfloor.analysis.band;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import java.util.Comparator;
import java.util.List;

/** What is kept of a failure that was run at a point. */
public sealed interface Figures {

  /**
   * The worse of two comes first: no answer before any answer, then the verdict, then water on
   * floors, then water that does not stop, then the margin.
   */
  Comparator<Figures> WORSE_FIRST =
      Comparator.comparingInt(Figures::group)
          .thenComparing(
              Comparator.comparingDouble((Figures figures) -> figures.known().onFloors())
                  .reversed())
          .thenComparing(
              Comparator.comparingDouble((Figures figures) -> figures.known().rate()).reversed())
          .thenComparingDouble(figures -> figures.known().margin());

  /**
   * An answer.
   *
   * @param onFloors water that reached floors or left the drawing (m³)
   * @param rate water that goes on flowing to where it should not (m³/s)
   * @param margin the least freeboard left (m)
   * @param inDoubt siphon breaks that may or may not work, of which the worse course is told
   */
  record Known(Verdict verdict, double onFloors, double rate, double margin, List<String> inDoubt)
      implements Figures {

    static final Known NOTHING = new Known(Verdict.DRY, 0, 0, 0, List.of());

    public Known {
      inDoubt = List.copyOf(inDoubt);
    }
  }

  /** It has no answer there, which never counts as dry. */
  record Unknown(String reason) implements Figures {}

  static Figures of(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> of(answered.outcome());
      case FailureResult.Unanswered open -> new Unknown(open.reason());
      case FailureResult.Skipped off -> new Unknown(off.reason());
    };
  }

  private static Figures of(Outcome outcome) {
    return new Known(
        outcome.verdict(),
        Math.max(outcome.reachedFloors(), outcome.beyond()),
        outcome.ending() instanceof Ending.Continues goesOn ? goesOn.rate() : 0,
        outcome.margin().freeboard(),
        outcome.notes().stream()
            .filter(Note.SiphonBreakInDoubt.class::isInstance)
            .map(note -> ((Note.SiphonBreakInDoubt) note).siphonBreak())
            .sorted()
            .toList());
  }

  /** From the worst, which is 0, to the best. */
  default int group() {
    return switch (this) {
      case Unknown open -> 0;
      case Known known ->
          switch (known.verdict()) {
            case WET -> 1;
            case CAUGHT -> 2;
            case DRY -> 3;
          };
    };
  }

  /** The figures if there is an answer; nothing at all if there is none. */
  private Known known() {
    return switch (this) {
      case Known known -> known;
      case Unknown open -> Known.NOTHING;
    };
  }

  /** Whether every floor stays dry, which no answer never is. */
  default boolean isDry() {
    return this instanceof Known known && known.verdict() != Verdict.WET;
  }

  /** Whether this is worse. */
  default boolean isWorseThan(Figures other) {
    return WORSE_FIRST.compare(this, other) < 0;
  }
}
