package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;

/**
 * Water that went from one place to another over one path, the pieces of a run being one path.
 *
 * @param from id of the place that gave it, or of the run whose own water it was
 * @param to id of the place that took it, or of the run that it filled
 * @param path id of the run, weir, vessel or floor
 * @param way how it went
 * @param volume in all (m³)
 * @param round how much of it only went round and round and came back to where it began (m³)
 */
public record Movement(
    String from, String to, String path, Ledger.Way way, double volume, double round) {

  /** What really changed place (m³). */
  public double moved() {
    return volume - round;
  }

  Movement withRound(double other) {
    return new Movement(from, to, path, way, volume, other);
  }
}
