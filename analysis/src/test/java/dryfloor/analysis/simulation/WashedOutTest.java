package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fresh water runs through a tank of 100 L at 35 g/kg, from there into a second one of as much, and
 * on to the sewer. Both are well mixed: when n times its water has passed, 35 e^−n is left in the
 * first, 35 (1 + n) e^−n in the second.
 */
class WashedOutTest {

  private static final double TANK = 0.1;

  private final FlowNetwork network = FlowNetwork.of(tanks().draw(), List.of());
  private final double[] volumes = new double[network.places().size()];
  private final double[] salts = new double[network.places().size()];

  @ParameterizedTest
  @CsvSource({"0.5, 21.229, 31.843", "1, 12.876, 25.752", "3, 1.7426, 6.9702"})
  void saltGoesByTheExponentialOfWhatPassed(double times, double first, double second) {
    pass(times);

    assertThat(salinity("first")).isCloseTo(first, within(0.02));
    assertThat(salinity("second")).isCloseTo(second, within(0.02));
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 50, 100, 1000, 5000, 20_000, 100_000, 1e6})
  void noMoreSaltIsWashedOutThanThereIs(double times) {
    pass(times);

    assertThat(salinity("first")).isBetween(-1e-9, 0.0035);
    assertThat(salinity("second")).isBetween(-1e-9, 0.0035);
    assertThat(salts[place("sewer")]).isCloseTo(2 * 35 * TANK, within(1e-3));
  }

  /** 80 L run from the first into the second; then 2 L come from the tap: 35 · 20 / 22. */
  @Test
  void freshWaterThatComesWhenATankHasDrainedDilutesWhatIsLeft() {
    fill();
    Salt salt = new Salt(network, salts);

    salt.carry(volumes, water("first", "second", 0.08));
    volumes[place("first")] -= 0.08;
    volumes[place("second")] += 0.08;
    salt.carry(volumes, water("tap", "first", 0.002));
    volumes[place("first")] += 0.002;
    salt.finish();

    assertThat(salinity("first")).isCloseTo(35.0 * 20 / 22, within(0.02));
    assertThat(salinity("second")).isCloseTo(35, within(0.02));
  }

  private void fill() {
    for (String tank : List.of("first", "second")) {
      volumes[place(tank)] = TANK;
      salts[place(tank)] = 35 * TANK;
    }
  }

  private double[] water(String from, String to, double volume) {
    double[] moved = new double[network.accounts().size()];
    moved[account(from, to)] = volume;
    return moved;
  }

  private void pass(double times) {
    fill();
    double[] moved = new double[network.accounts().size()];
    moved[account("tap", "first")] = times * TANK;
    moved[account("first", "second")] = times * TANK;
    moved[account("second", "sewer")] = times * TANK;
    Salt salt = new Salt(network, salts);
    salt.carry(volumes, moved);
    salt.finish();
  }

  private double salinity(String tank) {
    return salts[place(tank)] / volumes[place(tank)];
  }

  private int place(String id) {
    return network.places().stream().map(Place::id).toList().indexOf(id);
  }

  private int account(String from, String to) {
    return network
        .accounts()
        .indexOf(
            network.accounts().stream()
                .filter(account -> account.from() == place(from) && account.to() == place(to))
                .findFirst()
                .orElseThrow());
  }

  private static Plan tanks() {
    return Plan.of("Two tanks washed out")
        .storey("ground", 0)
        .floor("hall", 100)
        .source("tap", 3, 2e-5)
        .drain("sewer", -1)
        .vessel("first", box(1, 1, 0.3), v -> v.in("hall").raised(1).level(0.1))
        .vessel("second", box(1, 1, 0.3), v -> v.in("hall").level(0.1))
        .run("inlet", r -> r.fromSupply("tap").to("first", 0.29).length(1).bore(0.01))
        .run("over", r -> r.fromLip("first", 0.1).to("second", 0.29).length(1).bore(0.1))
        .run("away", r -> r.fromLip("second", 0.1).toDrain("sewer").length(1).bore(0.1));
  }
}
