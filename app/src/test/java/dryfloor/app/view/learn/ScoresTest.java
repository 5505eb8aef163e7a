package dryfloor.app.view.learn;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is remembered of rounds of exercises. */
class ScoresTest {

  private static final String SET = "examples";

  @Test
  void theBestRoundIsKeptThoughALaterOneIsWorse() {
    Scores scores = Scores.NONE.with(SET, new Round(900, 12, 12)).with(SET, new Round(700, 12, 12));

    Score score = scores.of(SET).orElseThrow();
    assertThat(score.best()).contains(new Round(900, 12, 12));
    assertThat(score.last()).isEqualTo(new Round(700, 12, 12));
    assertThat(score.finished()).isEqualTo(2);
  }

  @Test
  void aRoundThatWasBrokenOffIsTheLastButNeverTheBest() {
    Scores scores = Scores.NONE.with(SET, new Round(100, 1, 12));
    assertThat(scores.of(SET).orElseThrow().best()).isEmpty();

    Scores more = scores.with(SET, new Round(300, 12, 12)).with(SET, new Round(400, 4, 12));
    assertThat(more.of(SET).orElseThrow().best()).contains(new Round(300, 12, 12));
    assertThat(more.of(SET).orElseThrow().last()).isEqualTo(new Round(400, 4, 12));
    assertThat(more.of(SET).orElseThrow().finished()).isEqualTo(1);
  }

  @Test
  void roundsOfDifferentLengthAreComparedByTheirShare() {
    Scores scores = Scores.NONE.with(SET, new Round(450, 5, 5)).with(SET, new Round(600, 12, 12));

    assertThat(scores.of(SET).orElseThrow().best()).contains(new Round(450, 5, 5));
  }

  @Test
  void theSetTriedLastStandsAtTheEndAndAForgottenOneIsGone() {
    Round round = new Round(50, 1, 1);
    Scores scores = Scores.NONE.with("a", round).with("b", round).with("a", round);

    assertThat(scores.sets().keySet()).containsExactly("b", "a");
    assertThat(scores.without("a").sets().keySet()).containsExactly("b");
    assertThat(scores.without("nobody knows")).isEqualTo(scores);
  }
}
