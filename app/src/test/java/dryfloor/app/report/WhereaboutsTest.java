package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import org.junit.jupiter.api.Test;

/** What the line of a table says of the water. */
class WhereaboutsTest {

  private static final Wording WORDING = Wording.of(SampleInstallation.get(), Units.METRIC);

  @Test
  void whatIsCaughtButGoesOnSaysSo() {
    Outcome fed =
        SampleOutcome.ending(SampleOutcome.caught(), new Ending.Continues(60, 35e-3 / 3600));

    assertThat(Whereabouts.of(WORDING, fed)).endsWith("goes on at 35 L/h");
  }

  @Test
  void whatIsNotOverDoesNotLookFinal() {
    Outcome leak =
        SampleOutcome.ending(SampleOutcome.wet(), new Ending.StillMoving(3600, "display", -1e-5));

    assertThat(Whereabouts.of(WORDING, leak)).endsWith("so far, still moving after 1 h");
  }

  @Test
  void aWetFloorHasNoMarginAsNormal() {
    Outcome wet = SampleOutcome.wet();

    assertThat(Whereabouts.margin(WORDING, wet, wet)).isEmpty();
    assertThat(Whereabouts.margin(WORDING, SampleOutcome.dry(), SampleOutcome.dry()))
        .isEqualTo("as normal");
  }
}
