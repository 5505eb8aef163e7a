package dryfloor.analysis.rehearsal;

/** How a person can bring a failure about, and undo it at once, with dry hands. */
public enum Means {
  /** Switched off at the breaker, and on again where the failure has it so. */
  BREAKER,
  /** Unplugged, or switched off at its own switch. */
  PLUG,
  /** A valve turned by its handle. */
  HANDLE,
  /** A float lifted and held. */
  FLOAT,
  /** A wet cloth on a sensor. */
  WET_CLOTH
}
