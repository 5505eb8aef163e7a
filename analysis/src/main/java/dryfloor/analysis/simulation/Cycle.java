package dryfloor.analysis.simulation;

import java.util.List;

/**
 * A period that repeats.
 *
 * @param since when the first of the compared periods began (s)
 * @param period its length (s)
 * @param carried water over each account in one period (m³), forwards and backwards
 */
record Cycle(double since, double period, List<double[]> carried) {}
