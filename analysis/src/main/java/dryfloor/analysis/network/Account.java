package dryfloor.analysis.network;

import dryfloor.analysis.outcome.Ledger;

/**
 * One account of the ledger.
 *
 * @param path id of the run, weir, vessel or floor
 * @param way how water goes here
 * @param from index of the place that gives when the flow is positive
 * @param to index of the place that takes
 * @param inside whether water stays where it belongs: not a spill
 */
public record Account(String path, Ledger.Way way, int from, int to, boolean inside) {}
