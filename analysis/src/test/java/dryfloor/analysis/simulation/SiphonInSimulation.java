package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.network.FlowNetwork;
import java.util.List;

/**
 * A siphon between two lagoons, as the simulation sees it at one moment: entrance 0.5, exit 1, and
 * between them a loss that is spread evenly along a pipe drawn short.
 *
 * @param flow m³/s
 * @param crestPressureHead gauge, m of water
 */
public record SiphonInSimulation(double flow, double crestPressureHead) {

  private static final double DRAWN_LENGTH = 0.15;
  private static final double SURFACE = 8;

  /**
   * The siphon.
   *
   * @param bore m
   * @param fall from surface to surface, m
   * @param crestOverSurface m
   * @param spreadLoss velocity heads
   * @param crestAt share of the length up to the crest
   */
  public static SiphonInSimulation of(
      double bore, double fall, double crestOverSurface, double spreadLoss, double crestAt) {
    Plan plan =
        Plan.of("Siphon")
            .storey("ground", 0)
            .floor("yard", 1e9)
            .vessel("high", box(1e4, 1e4, 20), v -> v.in("yard").level(SURFACE).fresh())
            .vessel("low", box(1e4, 1e4, 20), v -> v.in("yard").level(SURFACE - fall).fresh())
            .run(
                "siphon",
                r ->
                    r.from("high", 3)
                        .to("low", 2)
                        .bore(bore)
                        .length(DRAWN_LENGTH)
                        .extraLoss(spreadLoss)
                        .by(SURFACE + crestOverSurface, crestAt * DRAWN_LENGTH)
                        .vented());
    FlowNetwork network = FlowNetwork.of(plan.draw(), List.of());
    State state = Beginning.asDeclared(network);
    FlowField field = new FlowField(network, state);
    field.rewire();
    field.evaluate(state.volumes);
    FullPipe pipe = new FullPipe(network, state, field, 0, field.builder.through(0));
    double flow = pipe.flowIfFull();
    return new SiphonInSimulation(flow, pipe.crestHolds());
  }
}
