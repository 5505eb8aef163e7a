package dryfloor.analysis.practice;

/** A rule that somebody published, or that the trade goes by, with where it stands. */
public enum Rule {
  /** An inlet of drinking water ends above the rim by twice its bore, 20 mm at least. */
  AIR_GAP("EN 1717 type AA; UK Water Supply (Water Fittings) Regulations 1999"),
  /** Water without end feeds a reservoir of limited size, never the circulation itself. */
  NO_MAINS_IN_CIRCULATION("common practice"),
  /** A check valve is never the only thing that keeps water up. */
  CHECK_VALVE_NOT_ALONE("common practice"),
  /** Siphon breaks are two, so that one may clog. */
  TWO_SIPHON_BREAKS("common practice"),
  /** An emergency drain is as wide as the main drain. */
  EMERGENCY_AS_WIDE("common practice"),
  /** An emergency drain has no valve. */
  EMERGENCY_WITHOUT_VALVE("common practice"),
  /** All of a reservoir fits into what it feeds, after the power has failed too. */
  RESERVOIR_FITS("common practice"),
  /** The drain of a pan is 3/4 in (19 mm) wide at least. */
  PAN_DRAIN_WIDTH("International Residential Code 2015, P2801.6.1 (water-heater pans)"),
  /** The drain of a pan takes what the pipes above it carry. */
  PAN_DRAIN_TAKES_INFLOW("common practice; capacity by Torricelli with the pan brimful"),
  /** A basin holds 110 % of the largest vessel in it, or a quarter of all. */
  CONTAINMENT_VOLUME("CIRIA C736 (2014), for tanks of chemicals"),
  /** Ordinary floors are built for some 2 kN/m². */
  FLOOR_LOAD("EN 1991-1-1:2002 Table 6.2, category A (from memory)"),
  /** A valve that shuts water without end off does so without power too. */
  SHUT_WITHOUT_POWER("common practice"),
  /** What empties a basin does not hang on the power whose loss fills it. */
  OWN_POWER("common practice");

  private final String source;

  Rule(String source) {
    this.source = source;
  }

  /** Where the rule stands. */
  public String source() {
    return source;
  }
}
