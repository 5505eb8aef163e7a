package dryfloor.analysis.limit;

/**
 * Values of a property in which no further failure wets a floor, both ends tried with every
 * failure.
 *
 * @param from lowest value
 * @param below what is wrong one step below
 * @param to highest value
 * @param above what is wrong one step above
 */
public record SafeRange(double from, Decider below, double to, Decider above) {}
