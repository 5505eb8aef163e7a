package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;

/** What a result comes to, told by a sign and a word together, never by colour alone. */
public enum Answer {
  WET("▲", "!", "WET"),
  CAUGHT("◐", "~", "CAUGHT"),
  DRY("●", "o", "DRY"),
  NO_ANSWER("?", "?", "NO ANSWER"),
  SKIPPED("–", "-", "SKIPPED");

  private final String sign;
  private final String plainSign;
  private final String word;

  Answer(String sign, String plainSign, String word) {
    this.sign = sign;
    this.plainSign = plainSign;
    this.word = word;
  }

  /** What this result comes to. */
  public static Answer of(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> of(answered.outcome());
      case FailureResult.Unanswered unanswered -> NO_ANSWER;
      case FailureResult.Skipped skipped -> SKIPPED;
    };
  }

  /** What this outcome comes to. */
  public static Answer of(Outcome outcome) {
    return switch (outcome.verdict()) {
      case WET -> WET;
      case CAUGHT -> CAUGHT;
      case DRY -> DRY;
    };
  }

  public String word() {
    return word;
  }

  /** The sign, or a stand-in where the reader's characters are few. */
  public String sign(boolean manyCharacters) {
    return manyCharacters ? sign : plainSign;
  }
}
