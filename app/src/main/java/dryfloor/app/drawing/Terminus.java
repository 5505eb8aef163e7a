package dryfloor.app.drawing;

/**
 * One end of a run as the router sees it.
 *
 * @param point where the end is (m)
 * @param column where the pipe first goes up or down from there
 * @param channel where it goes up or down beside the station
 * @param storey id of its storey
 * @param fixedHeight whether pipes come to it level, as to a tee
 */
record Terminus(Point point, double column, double channel, String storey, boolean fixedHeight) {}
