package dryfloor.app.view.lesson;

import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Round;
import dryfloor.app.view.learn.Score;

/** Scores in words. */
final class ScoreWords {

  private ScoreWords() {}

  static String of(Score score) {
    String last = of(score.last());
    return score
        .best()
        .map(best -> Words.of("learn.score.best", of(best), last, score.finished()))
        .orElseGet(() -> Words.of("learn.score.unfinished", last));
  }

  private static String of(Round round) {
    return round.isFinished()
        ? Words.of("learn.round", round.points(), round.possible())
        : Words.of("learn.round.part", round.points(), round.possible(), round.done(), round.of());
  }
}
