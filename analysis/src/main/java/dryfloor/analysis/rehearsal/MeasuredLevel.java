package dryfloor.analysis.rehearsal;

/**
 * A level that was read on site once all was still.
 *
 * @param vessel its id
 * @param level elevation (m)
 */
public record MeasuredLevel(String vessel, double level) {}
