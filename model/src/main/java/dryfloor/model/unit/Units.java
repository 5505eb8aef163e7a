package dryfloor.model.unit;

/** The units in which a user wants to read quantities. */
public enum Units {
  /** Millimetres, litres, litres per minute, °C, bar. */
  METRIC,
  /** Inches, US gallons, US gallons per minute, °F, psi. */
  US
}
