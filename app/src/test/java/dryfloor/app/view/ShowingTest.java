package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.app.view.work.Answers;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is shown of a failure that has no answer. */
class ShowingTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();

  @Test
  void aFailureWithoutAnAnswerTellsWhyAndIsNotCalledDry() {
    Showing showing = showing(new FailureResult.Unanswered(POWER, "no step at 7200.0 s in 'sump'"));

    assertThat(showing.word()).isEqualTo(Answer.NO_ANSWER);
    assertThat(showing.silence().orElseThrow().reason())
        .contains("the sump")
        .contains("Treat this failure as wet");
  }

  @Test
  void aFailureSwitchedOffTellsTheReasonThatWasGiven() {
    Showing showing = showing(new FailureResult.Skipped(POWER, "a generator stands by"));

    assertThat(showing.word()).isEqualTo(Answer.SKIPPED);
    assertThat(showing.silence().orElseThrow().reason()).contains("a generator stands by");
  }

  @Test
  void anAnswerHasAStoryAndNoSilence() {
    Showing showing = showing(new FailureResult.Answered(POWER, SampleOutcome.wet()));

    assertThat(showing.word()).isEqualTo(Answer.WET);
    assertThat(showing.silence()).isEmpty();
    assertThat(showing.film().story()).isNotEmpty();
  }

  private static Showing showing(FailureResult result) {
    SweepResult sweep =
        new SweepResult(SampleInstallation.get(), SampleOutcome.wet(), List.of(result));
    return Showing.of(new Answers.Known(sweep), Optional.of(result), new Looks());
  }
}
