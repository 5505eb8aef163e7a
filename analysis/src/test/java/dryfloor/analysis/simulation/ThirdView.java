package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.function.BooleanSupplier;

/**
 * The engine's own equations, taken through time by an explicit integrator of a general library: a
 * third view beside the engine and the plain simulator, on the stepping in time alone.
 */
public final class ThirdView {

  private ThirdView() {}

  /**
   * Normal operation, from the declared levels to where they settle.
   *
   * @throws NoAnswer if it comes to no answer
   */
  public static Course ofNormalOperation(
      FlowNetwork network, ExplicitMethod method, BooleanSupplier cancelled) {
    return Simulation.ofNormalOperation(network, with(method), cancelled);
  }

  /**
   * A failure, from where normal operation settled.
   *
   * @throws NoAnswer if it comes to no answer
   */
  public static Course ofFailure(
      Course normal, FlowNetwork failed, ExplicitMethod method, BooleanSupplier cancelled) {
    return Simulation.ofFailure(normal, failed, with(method), cancelled);
  }

  private static Stepper.Maker with(ExplicitMethod method) {
    return (network, state, field) -> new ExplicitStepper(state, field, method);
  }
}
