package dryfloor.model.element;

import java.util.OptionalDouble;

/**
 * Water from outside, endless.
 *
 * @param elevation of the connection (m)
 * @param pressure at rest (Pa gauge); none for a source that delivers its flow whatever stands
 *     against it
 * @param maximumFlow at no back-pressure (m³/s); none for a source limited by its pipes only
 * @param salinity of the water (g/kg)
 * @param protection against its own water flowing back into it
 */
public record Supply(
    String id,
    String name,
    Kind kind,
    double elevation,
    OptionalDouble pressure,
    OptionalDouble maximumFlow,
    double salinity,
    Protection protection)
    implements Element {

  /** Where the water comes from. */
  public enum Kind {
    MAINS,
    PURIFIER,
    WELL
  }

  /** What keeps the installation's water out of the supply. */
  public enum Protection {
    AIR_GAP,
    BACKFLOW_PREVENTER,
    NONE
  }
}
