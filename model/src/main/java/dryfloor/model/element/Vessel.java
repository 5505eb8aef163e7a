package dryfloor.model.element;

import dryfloor.model.shape.Shape;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Anything open-topped that holds water, basins included.
 *
 * @param role what it is there for
 * @param shape its inside
 * @param bottom elevation of the inside bottom (m)
 * @param level elevation of the water in normal operation (m); the bottom for a dry vessel
 * @param contents what displaces water in it (rock, sand, media, equipment)
 * @param salinity of its water (g/kg)
 * @param spillEdge length of the rim over which it spills (m)
 * @param standsIn id of the basin, vessel or floor in which it stands, where its spills land
 * @param emptyMass mass without water (kg), if known, to tell whether it can float
 */
public record Vessel(
    String id,
    String name,
    Role role,
    Shape shape,
    double bottom,
    double level,
    List<Displacement> contents,
    double salinity,
    double spillEdge,
    String standsIn,
    OptionalDouble emptyMass)
    implements Element {

  public Vessel {
    contents = List.copyOf(contents);
  }

  /** What a vessel is there for, in the trade's words. */
  public enum Role {
    DISPLAY,
    OVERFLOW_BOX,
    SUMP,
    RESERVOIR,
    MIXING_VAT,
    QUARANTINE,
    SKIMMER_BODY,
    REFUGIUM,
    RACEWAY,
    HEADER,
    BASIN
  }

  /**
   * Solid contents between two depths above the inside bottom, spread evenly between them.
   *
   * @param from lower depth (m)
   * @param to upper depth (m)
   * @param volume displaced (m³)
   */
  public record Displacement(double from, double to, double volume) {

    /** Volume displaced below a depth (m³). */
    public double volumeBelow(double depth) {
      return volume * Math.clamp((depth - from) / (to - from), 0, 1);
    }

    /** Plan area taken at a depth (m²). */
    public double areaAt(double depth) {
      return depth >= from && depth < to ? volume / (to - from) : 0;
    }
  }

  /** Elevation of the rim (m). */
  public double rim() {
    return bottom + shape.height();
  }

  /** Whether it is dry in normal operation and there to catch. */
  public boolean isBasin() {
    return role == Role.BASIN;
  }

  /** The same vessel with its water at another elevation (m) in normal operation. */
  public Vessel withLevel(double other) {
    return with(shape, other, contents, spillEdge, standsIn);
  }

  /** The same vessel of another shape; it spills over the same share of its rim. */
  public Vessel withShape(Shape other) {
    double edge = spillEdge * (other.rimLength() / shape.rimLength());
    return with(other, level, contents, edge, standsIn);
  }

  /** The same vessel with other contents. */
  public Vessel withContents(List<Displacement> other) {
    return with(shape, level, other, spillEdge, standsIn);
  }

  /** The same vessel in another place, at the same height. */
  public Vessel withStandsIn(String other) {
    return with(shape, level, contents, spillEdge, other);
  }

  private Vessel with(
      Shape aShape, double aLevel, List<Displacement> some, double edge, String place) {
    return new Vessel(
        id, name, role, aShape, bottom, aLevel, some, salinity, edge, place, emptyMass);
  }
}
