package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HiddenFailuresTest {

  private static final Installation SHOWROOM = Showroom.installation();

  private static boolean isHidden(String id) {
    return FailureTraits.isHidden(FailureCatalogue.find(SHOWROOM, id).orElseThrow(), SHOWROOM);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "siphon-break-blocked.siphon-break",
        "check-valve-does-not-close.check-valve",
        "check-valve-leaks-back.check-valve",
        "clogged.emergency-drain",
        "joint-parts.emergency-drain.emergency-joint",
        "basin-drain-blocked.tray-drain",
        "drain-takes-nothing.house-drain",
        "does-not-act.leak-sensor",
        "does-not-act.top-off-timer",
        "stuck-low.high-switch",
        "stuck-open.fill-valve",
        "second-end-sinks.return-line",
        "clogged.high-lip"
      })
  void guardsAndWhatIsDryFailWithoutASign(String id) {
    assertThat(isHidden(id)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "power-lost.building",
        "pump-stops.return-pump",
        "check-valve-stuck-shut.check-valve",
        "clogged.drain-line",
        "clogged.teeth",
        "joint-parts.return-line.chiller-union",
        "stuck-low.top-off-switch",
        "stuck-high.high-switch",
        "stuck-shut.fill-valve",
        "stuck-open.reservoir-float",
        "wall-fails.display"
      })
  void whatWorksAllTheTimeFailsInPlainSight(String id) {
    assertThat(isHidden(id)).isFalse();
  }

  @Test
  void aHiddenFailureIsNoticedOnlyByTesting() {
    Failure clogged = new Failure.RunClogs("emergency-drain", Failure.Degree.FULLY);
    assertThat(FailureTraits.howNoticed(clogged, SHOWROOM)).contains("only by testing");
  }

  @Test
  void powerIsAnOrdinaryEventAndTheRestIsNot() {
    assertThat(FailureTraits.isOrdinaryEvent(new Failure.CircuitTrips("main"))).isTrue();
    assertThat(FailureTraits.isOrdinaryEvent(new Failure.PumpStops("return-pump"))).isFalse();
  }
}
