package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import dryfloor.model.part.Part;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Equipment that opens leaks before what it resists, wherever in its run it sits.
 *
 * <pre>
 * Mains of 3 bar feed a reservoir through 4 m of 6 mm and a purifier that costs 30 000 velocity
 * heads. Its lid opens at the height of the mains, and the whole bore pours out (0.61): only the
 * entrance (0.5) and the pipe up to the purifier hold the mains back,
 *   300 000/(997.05 · 9.80665) = 30.682 m
 * some 0.2 L/s from a purifier next to the mains. Behind the membrane it would be 4 mL/s.
 * </pre>
 */
class DeviceThatOpensByHandTest {

  private static final double HEAD = 300_000 / (997.05 * 9.80665);
  private static final double VISCOSITY = 0.8901e-3 / 997.05;

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.03, 2, 3.99, 4})
  void aPurifierWithItsLidOpenPoursWhatTheMainsGiveIt(double along) {
    // A cut is never nearer to an end than 20 mm.
    double length = Math.clamp(along, 0.02, 3.98);
    double byHand =
        new PipeByHand(0.006, length, 1.5e-6, 0.5 + 1 / (0.61 * 0.61), VISCOSITY).flow(HEAD);

    Outcome outcome = Trial.after(fillLine(along), new Failure.DeviceLidOpens("purifier"));

    assertThat(((Ending.Continues) outcome.ending()).rate()).isCloseTo(byHand, withPercentage(0.5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.03, 2, 3.99, 4})
  void aPurifierThatLetsGoPoursWhatTheMainsGiveIt(double along) {
    // Both halves lie open to the air: no hole to squeeze through, but entrance (0.5) and exit
    // (1.0).
    double length = Math.clamp(along, 0.02, 3.98);
    double byHand = new PipeByHand(0.006, length, 1.5e-6, 1.5, VISCOSITY).flow(HEAD);

    Outcome outcome = Trial.after(fillLine(along), new Failure.DeviceConnectionLetsGo("purifier"));

    assertThat(((Ending.Continues) outcome.ending()).rate()).isCloseTo(byHand, withPercentage(0.5));
  }

  private static Installation fillLine(double along) {
    return Plan.of("Fill line")
        .storey("ground", 0)
        .floor("room", 50)
        .mains("mains", 0.5, 3e5)
        .vessel("reservoir", box(1, 0.5, 1), v -> v.in("room").level(0.9).fresh())
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("reservoir", 0.95)
                    .bore(0.006)
                    .length(4)
                    .parts(
                        new Part.Device(
                            "purifier",
                            "purifier",
                            along,
                            Part.Device.Kind.PURIFIER,
                            0.5,
                            30_000,
                            0,
                            OptionalDouble.empty(),
                            Optional.of("room")))
                    .floatValve("float", 4, 0.1, "reservoir", 0.9, 0.02))
        .draw();
  }
}
