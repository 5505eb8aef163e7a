package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever is said to have moved: what goes round fills nothing and empties nothing. */
class CirculationTest {

  private final FlowNetwork network = FlowNetwork.of(EverythingHouse.asDrawn(), List.of());
  private final double[] moved =
      new SplittableRandom(7).doubles(network.accounts().size(), -1, 1).toArray();

  @Test
  void whatGoesRoundLeavesEveryPlaceAsFullAsItWas() {
    double[] gained = gained(Circulation.of(network, moved));

    for (int place = 0; place < gained.length; place++) {
      if (network.places().get(place).kind().isPool()) {
        assertThat(gained[place]).as(name(place)).isCloseTo(0, within(1e-9));
      }
    }
  }

  @Test
  void whatComesOutOfARunHasComeIn() {
    double[] gained = gained(Circulation.throughRuns(network, moved));

    for (int place = 0; place < gained.length; place++) {
      switch (network.places().get(place).kind()) {
        case COLUMN, TEE -> assertThat(gained[place]).as(name(place)).isCloseTo(0, within(1e-9));
        case VESSEL, BASIN, FLOOR, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> {}
      }
    }
  }

  /** Between two vessels with no run in between, all that moved has moved. */
  @Test
  void aVesselMayGainWhatAnotherGives() {
    double[] through = Circulation.throughRuns(network, moved);

    for (int a = 0; a < moved.length; a++) {
      if (isInSight(network.accounts().get(a).from())
          && isInSight(network.accounts().get(a).to())) {
        assertThat(through[a]).isCloseTo(moved[a], within(1e-9));
      }
    }
  }

  private double[] gained(double[] water) {
    double[] gained = new double[network.places().size()];
    for (int a = 0; a < water.length; a++) {
      gained[network.accounts().get(a).from()] -= water[a];
      gained[network.accounts().get(a).to()] += water[a];
    }
    return gained;
  }

  private boolean isInSight(int place) {
    return network.places().get(place).kind().isShown();
  }

  private String name(int place) {
    Place what = network.places().get(place);
    return what.kind() + " " + what.id();
  }
}
