package dryfloor.model.unit;

/**
 * What a quantity measures, the unit it has inside, and how small or large it can sensibly be in a
 * building. The bounds are wide: they catch slips of the pen, not bold designs.
 */
public enum QuantityKind {
  /** Length (m). */
  LENGTH("a length", "32 mm", 1e-7, 1000, "from 0.0001 mm to 1000 m"),
  /** Area (m²). */
  AREA("an area", "2.5 m2", 1e-9, 1e6, "from 0.001 mm2 to 1000000 m2"),
  /** Volume (m³). */
  VOLUME("a volume", "120 L", 1e-9, 1e6, "from 0.001 mL to 1000000 m3"),
  /** Volume flow (m³/s). */
  FLOW("a flow", "4 L/min", 1e-12, 100, "from 0.00006 mL/min to 100 m3/s"),
  /** Pressure above atmospheric (Pa). */
  PRESSURE("a pressure", "3 bar", 0.1, 1e8, "from 0.1 Pa to 1000 bar"),
  /** Pressure as the height of a column of water (m). */
  HEAD("a head of water", "3.2 m", 1e-6, 1000, "from 0.001 mm to 1000 m"),
  /** Time (s). */
  TIME("a time", "10 min", 1e-3, 10 * 365 * 86400.0, "from 0.001 s to 3650 d"),
  /** Temperature of water (°C), as far as the laws of water that are used go. */
  TEMPERATURE("a temperature", "25 °C", 0, 50, "from 0 °C to 50 °C"),
  /** Mass of salt in the mass of salt water (g/kg), as far as the laws of water go. */
  SALINITY("a salinity", "35 g/kg", 1e-6, 80, "from 0.000001 g/kg to 80 g/kg"),
  /** Mass (kg). */
  MASS("a mass", "60 kg", 1e-3, 1e8, "from 1 g to 100000 t"),
  /** Valve coefficient Kv: flow in m³/h at 1 bar. */
  VALVE_COEFFICIENT("a valve coefficient", "6.5", 1e-6, 1e5, "from 0.000001 to 100000"),
  /** A plain number. */
  NUMBER("a plain number", "1.5", 1e-9, 1e6, "from 0.000000001 to 1000000"),
  /** A part of a whole, 1 being all of it. */
  FRACTION("a fraction", "50 %", 1e-9, 10, "from 0.0000001 % to 1000 %");

  private final String description;
  private final String example;
  private final double smallest;
  private final double largest;
  private final String range;

  QuantityKind(String description, String example, double smallest, double largest, String range) {
    this.description = description;
    this.example = example;
    this.smallest = smallest;
    this.largest = largest;
    this.range = range;
  }

  /** In words with its article: "a length". */
  public String description() {
    return description;
  }

  /** As a person would write it: "32 mm". */
  public String example() {
    return example;
  }

  /** The example as it stands in a file: in quotes, unless a plain number will do. */
  public String quotedExample() {
    return needsNoUnit() && this != FRACTION ? example : "\"" + example + "\"";
  }

  /** What would be right, to follow on "is": "a length such as "32 mm"". */
  public String wanted() {
    return description + " such as " + quotedExample();
  }

  /** The smallest sensible value above zero (for a temperature: at all), in the unit inside. */
  public double smallest() {
    return smallest;
  }

  /** The largest sensible value, in the unit inside. */
  public double largest() {
    return largest;
  }

  /** The smallest and the largest sensible value as a person writes them: "from ... to ...". */
  public String range() {
    return range;
  }

  /** Whether a quantity written in a unit of another kind is meant: a head is written as length. */
  boolean accepts(QuantityKind written) {
    return written == this || (this == HEAD && written == LENGTH);
  }

  /** Whether a number without a unit says enough. */
  boolean needsNoUnit() {
    return this == NUMBER || this == FRACTION || this == VALVE_COEFFICIENT;
  }
}
