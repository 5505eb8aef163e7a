package dryfloor.analysis.rehearsal;

import dryfloor.analysis.failure.Failure;

/** How much stops at once in a rehearsal, least first. */
enum Extent {
  ONE_THING,
  ONE_CIRCUIT,
  THE_BUILDING,
  /** Stops, and starts again by itself. */
  AND_BACK;

  static Extent of(Failure failure) {
    if (failure instanceof Failure.CircuitTrips) {
      return ONE_CIRCUIT;
    }
    if (failure instanceof Failure.BuildingLosesPower
        || failure instanceof Failure.OnlyBackupRuns) {
      return THE_BUILDING;
    }
    return failure instanceof Failure.BuildingLosesPowerForAWhile
            || failure instanceof Failure.CircuitTripsForAWhile
            || failure instanceof Failure.PowerFlickers
        ? AND_BACK
        : ONE_THING;
  }
}
