package dryfloor.app.report;

import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.together.PairAnswer;

/** What a pair comes to, as a sign of a matrix and a word of the JSON answer. */
enum PairSign {
  WET_TOGETHER("▲", "!", "a floor gets wet, though neither failure wets one alone"),
  CAUGHT("◐", "~", "something spills and is caught"),
  DRY("·", ".", "nothing leaves its vessel"),
  WET_ALONE("x", "x", "one of the two wets a floor alone"),
  EXCLUDED("-", "-", "the two can't both be"),
  NO_ANSWER("?", "?", "no answer, which never counts as dry");

  private final String sign;
  private final String plainSign;
  private final String meaning;

  PairSign(String sign, String plainSign, String meaning) {
    this.sign = sign;
    this.plainSign = plainSign;
    this.meaning = meaning;
  }

  static PairSign of(PairAnswer answer) {
    return switch (answer) {
      case PairAnswer.WetAlone wet -> WET_ALONE;
      case PairAnswer.AsOneAlone same -> of(same.verdict());
      case PairAnswer.Apart apart -> of(apart.verdict());
      case PairAnswer.Together together -> of(together.outcome().verdict());
      case PairAnswer.Excluded excluded -> EXCLUDED;
      case PairAnswer.Unanswered unanswered -> NO_ANSWER;
    };
  }

  private static PairSign of(Verdict verdict) {
    return switch (verdict) {
      case WET -> WET_TOGETHER;
      case CAUGHT -> CAUGHT;
      case DRY -> DRY;
    };
  }

  String sign(Ink ink) {
    return ink.manyCharacters() ? sign : plainSign;
  }

  String meaning() {
    return meaning;
  }
}
