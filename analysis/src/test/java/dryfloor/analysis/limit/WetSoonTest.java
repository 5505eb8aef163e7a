package dryfloor.analysis.limit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is wrong at a value is the same whether a failure that wets a floor is run out or not. */
class WetSoonTest {

  private static final int PARTS = 2;

  @Test
  void notRunningOutWhatIsWetChangesNoAnswer() throws BaselineProblem {
    Installation drawn = Shipped.named("first-look/as-drawn");
    Today today = new Today(Sweep.everyFailure(drawn, 2, Progress.NONE), Bounds.DRY_FLOORS);
    List<Failure> wet = today.wrong().toList();
    int mended = 0;
    int kept = 0;
    for (Property property : Limits.properties(drawn)) {
      for (Trial trial : trials(new Choices(drawn), property, today)) {
        Inquiry inquiry = trial.inquiry().orElseThrow();
        for (Failure failure : wet.stream().filter(trial.failures()::contains).toList()) {
          boolean dry = trial.wrong(failure).isEmpty();
          assertThat(trial.wrong(failure))
              .as("%s, %s", property, FailureNames.id(failure))
              .isEqualTo(today.wrong(inquiry.answerOnce(List.of(failure)), inquiry.installation()));
          mended += dry ? 1 : 0;
          kept += dry ? 0 : 1;
        }
      }
    }
    assertThat(mended).as("mended somewhere").isPositive();
    assertThat(kept).as("kept somewhere").isPositive();
  }

  /** Values all over the scale at which the drawing can be drawn and runs. */
  private static List<Trial> trials(Choices choices, Property property, Today today) {
    Scale scale = choices.scale(property);
    return IntStream.rangeClosed(0, PARTS)
        .map(part -> scale.least() + (scale.most() - scale.least()) * part / PARTS)
        .mapToObj(step -> Trial.of(choices, property, scale.value(step), today, () -> false))
        .filter(trial -> trial.unsound().isEmpty() && trial.inquiry().isPresent())
        .toList();
  }
}
