package dryfloor.analysis.network;

/**
 * A junction.
 *
 * @param id of the junction, or of the run in which a leak made one
 * @param elevation (m)
 * @param place index of the place that it is once it has drained and stands open to the air
 * @param bore of the widest pipe at it (m)
 * @param startsFull whether it stands full of water in normal operation if it can
 * @param staysOpen whether it is never full
 */
public record Tee(
    String id, double elevation, int place, double bore, boolean startsFull, boolean staysOpen) {}
