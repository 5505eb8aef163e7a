package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who ends a sweep early keeps what is answered and is told what is not. */
class CancelledSweepTest {

  /** Cancels after so many answers. */
  private static final class Impatient implements Progress {

    private final int enough;
    private int done;

    Impatient(int enough) {
      this.enough = enough;
    }

    @Override
    public void finished(int done, int of) {
      this.done = done;
    }

    @Override
    public boolean cancelled() {
      return done >= enough;
    }
  }

  @Test
  void whatWasNotAskedAnyMoreIsToldAsUnanswered() throws BaselineProblem {
    Installation house = DisplayAboveSump.asDrawn();

    List<FailureResult> results = Sweep.everyFailure(house, 1, new Impatient(3)).results();

    assertThat(results)
        .extracting(FailureResult::failure)
        .containsExactlyElementsOf(FailureCatalogue.of(house));
    assertThat(results.subList(0, 3)).hasOnlyElementsOfType(FailureResult.Answered.class);
    assertThat(results.subList(3, results.size()))
        .isNotEmpty()
        .allSatisfy(
            result ->
                assertThat(result)
                    .isEqualTo(new FailureResult.Unanswered(result.failure(), "it was cancelled")));
  }
}
