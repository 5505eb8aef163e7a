package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import java.util.List;

/**
 * A run with one opening higher or lower. The pipe between it and the next bend is drawn as much
 * longer or shorter as the climb becomes; all else stays where it is.
 */
final class MovedEnd {

  private MovedEnd() {}

  static Installation of(Installation drawn, String run, End end, double elevation) {
    return Redrawn.run(drawn, run, r -> of(drawn, r, end, elevation));
  }

  private static Run of(Installation drawn, Run run, End end, double elevation) {
    RunEnd.Opening old = (RunEnd.Opening) (end == End.FIRST ? run.from() : run.to());
    double next = nextElevation(drawn, run, end);
    double more = Math.abs(elevation - next) - Math.abs(old.elevation() - next);
    RunEnd.Opening moved = new RunEnd.Opening(old.at(), elevation, old.kind());
    Run longer = run.withLength(run.length() + more);
    return switch (end) {
      case FIRST ->
          longer
              .withEnds(moved, run.to())
              .withWaypoints(
                  run.waypoints().stream()
                      .map(p -> new Run.Waypoint(p.elevation(), Math.max(p.along() + more, 0)))
                      .toList())
              .withParts(
                  run.parts().stream()
                      .map(part -> part.at(Math.max(part.along() + more, 0)))
                      .toList());
      case SECOND ->
          longer
              .withEnds(run.from(), moved)
              .withParts(
                  run.parts().stream()
                      .map(part -> part.at(Math.min(part.along(), longer.length())))
                      .toList());
    };
  }

  /** Where the pipe goes from this end: its nearest bend, or else its other end (m). */
  private static double nextElevation(Installation drawn, Run run, End end) {
    List<Run.Waypoint> bends = run.waypoints();
    if (!bends.isEmpty()) {
      return (end == End.FIRST ? bends.getFirst() : bends.getLast()).elevation();
    }
    return drawn.elevationOf(end == End.FIRST ? run.to() : run.from());
  }
}
