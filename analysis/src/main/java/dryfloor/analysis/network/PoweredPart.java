package dryfloor.analysis.network;

import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.Optional;

/**
 * Something that needs power to do what it does.
 *
 * @param id of the pump, circulation pump or valve
 * @param power circuit and behaviour
 * @param inlet where a pump sucks: index of the place, or -1
 * @param inletElevation of that opening (m)
 * @param primesAgain whether it takes up water again after sucking air
 * @param valve rest position and drawn opening; none for a pump
 * @param cannotRun broken
 * @param ignoresControls runs on whatever controls say
 * @param frozen a valve that keeps its opening of the moment
 */
public record PoweredPart(
    String id,
    Power power,
    int inlet,
    double inletElevation,
    boolean primesAgain,
    Optional<ValvePositions> valve,
    boolean cannotRun,
    boolean ignoresControls,
    boolean frozen) {

  /**
   * Openings of a powered valve (0 to 1).
   *
   * @param on opening while it is called for
   * @param rest where it goes without power
   */
  public record ValvePositions(double on, Part.Valve.Rest rest) {}
}
