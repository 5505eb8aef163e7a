package dryfloor.app.view.learn;

import java.util.Optional;

/**
 * How a set of exercises was mastered so far.
 *
 * @param best of the rounds that were finished; none where none was
 * @param last round, finished or not
 * @param finished how many rounds were finished
 */
public record Score(Optional<Round> best, Round last, int finished) {

  /** After a first round, finished or not. */
  static Score first(Round round) {
    return new Score(
        Optional.of(round).filter(Round::isFinished), round, round.isFinished() ? 1 : 0);
  }

  /** After one round more, finished or not. */
  Score with(Round round) {
    if (!round.isFinished()) {
      return new Score(best, round, finished);
    }
    Round better = best.filter(known -> !round.isBetterThan(known)).orElse(round);
    return new Score(Optional.of(better), round, finished + 1);
  }
}
