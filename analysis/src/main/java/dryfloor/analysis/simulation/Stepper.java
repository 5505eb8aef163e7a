package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.List;

/**
 * Takes the water from one moment to a later one, within one set of modes.
 *
 * <p>A stepper reads the state and moves the field; the state itself it leaves to the simulation,
 * which takes down each step before it accepts it.
 */
interface Stepper {

  /** Works out the flows from which the next step starts, in the present modes. */
  void begin();

  /**
   * Takes a step from where the state is. It ends early where the first of the triggers becomes
   * due. Afterwards the field holds the flows at its end, from which the next step may start.
   *
   * @param longest the step may be no longer (s)
   * @throws NoAnswer if there is no such step
   */
  Step advance(double longest, List<Trigger> triggers);

  /**
   * A step that was taken; its arrays are good until the next one.
   *
   * @param length (s)
   * @param moved water over each account (m³)
   * @param volumes of all places at its end (m³)
   * @param within volumes between its ends
   * @param due whether any of the triggers is due at its end
   * @param next length to try next (s)
   */
  @SuppressWarnings("ArrayRecordComponent") // the solver's own arrays, shared and never compared
  record Step(
      double length, double[] moved, double[] volumes, Crossing within, boolean due, double next) {}

  /** Makes the stepper of a simulation. */
  interface Maker {
    Stepper make(FlowNetwork network, State state, FlowField field);
  }
}
