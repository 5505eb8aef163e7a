package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;

/** Something in a drawing that a user may choose, with the id of the element or part it is of. */
public sealed interface Property {

  /** Id of the element or part. */
  String of();

  /** Level at which a vessel is run (elevation, m), by filling more or less. */
  record RunningLevel(String of) implements Property {}

  /** Elevation of the rim of a vessel or basin (m), its walls carried on or cut off. */
  record Rim(String of) implements Property {}

  /** What a basin holds up to its rim (m³), by its plan area. */
  record BasinSize(String of) implements Property {}

  /** What a reservoir holds at its level (m³), by its plan area. */
  record ReservoirVolume(String of) implements Property {}

  /** Elevation of the edge between two vessels (m). */
  record WeirCrest(String of) implements Property {}

  /** Elevation of the lip of a standpipe (m). */
  record StandpipeLip(String of, End end) implements Property {}

  /** Elevation of another opening of a run in a vessel (m): how deep a port or outlet sits. */
  record Port(String of, End end) implements Property {}

  /** Elevation of the holes of a siphon break (m). */
  record SiphonBreakHeight(String of) implements Property {}

  /** Bore of a run that drains (m). */
  record DrainBore(String of) implements Property {}

  /** Speed of a pump (fraction of full speed). */
  record PumpSpeed(String of) implements Property {}

  /** Opening of a hand valve in normal operation (fraction). */
  record ValveOpening(String of) implements Property {}
}
