package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FloatingTest {

  /**
   * A tank of 200 L leaks into a tray of 1 m², which rises to some 190 mm. The empty tub in it has
   * 0.1 m²: 1 kg floats from 10 mm of water on, 40 kg would need 390 mm. That a low tub is flooded
   * in the end, and then holds water, does not take back that it was lifted before.
   */
  @ParameterizedTest
  @CsvSource({"0.3, 1, true", "0.15, 1, true", "0.15, 40, false", "0.3, 40, false"})
  void aLightTubFloatsBeforeItIsFlooded(double height, double mass, boolean floats) {
    Outcome outcome =
        Trial.after(
            Plan.of("Tub in a tray")
                .storey("ground", 0)
                .floor("room", 50)
                .basin("tray", box(1, 1, 0.25), "room")
                .vessel("tub", box(0.5, 0.2, height), v -> v.in("tray").level(0).weighs(mass))
                .vessel("tank", box(1, 0.4, 0.6), v -> v.in("tray").raised(0.3).level(0.5))
                .draw(),
            new Failure.SeamLeaks("tank"));

    assertThat(outcome.notes().contains(new Note.MayFloat("tub"))).isEqualTo(floats);
  }
}
