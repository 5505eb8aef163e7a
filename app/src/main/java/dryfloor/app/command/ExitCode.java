package dryfloor.app.command;

import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import java.util.List;

/** What the program tells whoever started it, from best to worst. */
public enum ExitCode {
  /** Every floor stays dry. */
  FLOOR_DRY(0),
  /** A floor gets wet. */
  FLOOR_WET(1),
  /** A failure has no answer, which never counts as dry. */
  NO_ANSWER(3),
  /** The input or the way it was asked is wrong. */
  BAD_INPUT(2);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  /** As the operating system knows it. */
  public int number() {
    return number;
  }

  ExitCode worse(ExitCode other) {
    return compareTo(other) >= 0 ? this : other;
  }

  static ExitCode of(List<FailureResult> results) {
    return results.stream().map(Answer::of).map(ExitCode::of).reduce(FLOOR_DRY, ExitCode::worse);
  }

  static ExitCode of(Answer answer) {
    return switch (answer) {
      case WET -> FLOOR_WET;
      case NO_ANSWER -> NO_ANSWER;
      case CAUGHT, DRY, SKIPPED -> FLOOR_DRY;
    };
  }
}
