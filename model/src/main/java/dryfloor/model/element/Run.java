package dryfloor.model.element;

import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;

/**
 * A pipe or hose path from one end to another.
 *
 * @param from first end; pumps and check valves point away from it
 * @param to second end
 * @param duty what it does for the vessel it drains, if it drains one
 * @param bore inside diameter (m)
 * @param length developed length (m)
 * @param roughness of its wall (m)
 * @param fittings bends, tees and the like in it, counted
 * @param extraLoss further loss coefficient of the user's own (velocity heads in the bore)
 * @param waypoints every crest and every low point between the ends, in order
 * @param parts inline, in order
 * @param vented whether an open vent at its crest lets air in at all times
 * @param standsIn id of the basin, vessel or floor on which it spills if it comes apart
 */
public record Run(
    String id,
    String name,
    RunEnd from,
    RunEnd to,
    Duty duty,
    double bore,
    double length,
    double roughness,
    List<FittingCount> fittings,
    double extraLoss,
    List<Waypoint> waypoints,
    List<Part> parts,
    boolean vented,
    Optional<String> standsIn)
    implements Element {

  public Run {
    fittings = List.copyOf(fittings);
    waypoints = List.copyOf(waypoints);
    parts = List.copyOf(parts);
  }

  /** What a run does in normal operation. */
  public enum Duty {
    /** Carries pumped or supplied water. */
    FEED,
    /** Drains by gravity all the time. */
    DRAIN,
    /** Dry until a main drain fails. */
    EMERGENCY
  }

  /** So many fittings of a kind. */
  public record FittingCount(Fitting kind, int count) {}

  /**
   * A crest or low point.
   *
   * @param elevation of the pipe there (m)
   * @param along distance from the first end (m)
   */
  public record Waypoint(double elevation, double along) {}

  /** Inside cross-section (m²). */
  public double boreArea() {
    return Math.PI / 4 * bore * bore;
  }

  /** The same run between other ends. */
  public Run withEnds(RunEnd first, RunEnd second) {
    return with(first, second, bore, length, waypoints, parts, standsIn);
  }

  /** The same run of another bore (m). */
  public Run withBore(double other) {
    return with(from, to, other, length, waypoints, parts, standsIn);
  }

  /** The same run of another length (m); what is along it stays where it is. */
  public Run withLength(double other) {
    return with(from, to, bore, other, waypoints, parts, standsIn);
  }

  /** The same run with other crests and low points. */
  public Run withWaypoints(List<Waypoint> other) {
    return with(from, to, bore, length, other, parts, standsIn);
  }

  /** The same run with other parts. */
  public Run withParts(List<Part> other) {
    return with(from, to, bore, length, waypoints, other, standsIn);
  }

  /** The same run over another place. */
  public Run withStandsIn(Optional<String> other) {
    return with(from, to, bore, length, waypoints, parts, other);
  }

  private Run with(
      RunEnd first,
      RunEnd second,
      double aBore,
      double aLength,
      List<Waypoint> someWaypoints,
      List<Part> someParts,
      Optional<String> aPlace) {
    return new Run(
        id,
        name,
        first,
        second,
        duty,
        aBore,
        aLength,
        roughness,
        fittings,
        extraLoss,
        someWaypoints,
        someParts,
        vented,
        aPlace);
  }
}
