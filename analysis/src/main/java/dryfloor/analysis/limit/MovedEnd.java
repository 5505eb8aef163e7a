package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Element;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.stream.Stream;

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
    return switch (end) {
      case FIRST ->
          Redrawn.run(
              run,
              moved,
              run.to(),
              run.bore(),
              run.length() + more,
              run.waypoints().stream()
                  .map(p -> new Run.Waypoint(p.elevation(), Math.max(p.along() + more, 0)))
                  .toList(),
              run.parts().stream()
                  .map(part -> Shifted.of(part, Math.max(part.along() + more, 0)))
                  .toList());
      case SECOND ->
          Redrawn.run(
              run,
              run.from(),
              moved,
              run.bore(),
              run.length() + more,
              run.waypoints(),
              run.parts().stream()
                  .map(part -> Shifted.of(part, Math.min(part.along(), run.length() + more)))
                  .toList());
    };
  }

  /** Where the pipe goes from this end: its nearest bend, or else its other end (m). */
  private static double nextElevation(Installation drawn, Run run, End end) {
    List<Run.Waypoint> bends = run.waypoints();
    if (!bends.isEmpty()) {
      return (end == End.FIRST ? bends.getFirst() : bends.getLast()).elevation();
    }
    return switch (end == End.FIRST ? run.to() : run.from()) {
      case RunEnd.Opening opening -> opening.elevation();
      case RunEnd.AtJunction at -> elevation(drawn, at.at());
      case RunEnd.AtSupply at -> elevation(drawn, at.at());
      case RunEnd.AtDrain at -> elevation(drawn, at.at());
    };
  }

  private static double elevation(Installation drawn, String id) {
    Stream<Element> points =
        Stream.of(drawn.junctions(), drawn.supplies(), drawn.drains()).flatMap(List::stream);
    return points
        .filter(point -> point.id().equals(id))
        .mapToDouble(
            point ->
                point instanceof Junction junction
                    ? junction.elevation()
                    : point instanceof Supply supply
                        ? supply.elevation()
                        : ((Drain) point).elevation())
        .findFirst()
        .orElseThrow();
  }

  /** A part at another distance along its run. */
  private static final class Shifted {

    private Shifted() {}

    static Part of(Part part, double along) {
      return switch (part) {
        case Part.Pump p ->
            new Part.Pump(
                p.id(),
                p.name(),
                along,
                p.curve(),
                p.speed(),
                p.kind(),
                p.power(),
                p.stoppedLoss(),
                p.primesAgain(),
                p.standsIn());
        case Part.Valve v ->
            new Part.Valve(v.id(), v.name(), along, v.kv(), v.opening(), v.drive());
        case Part.FloatValve f ->
            new Part.FloatValve(
                f.id(), f.name(), along, f.kv(), f.vessel(), f.closesAt(), f.band());
        case Part.CheckValve c ->
            new Part.CheckValve(c.id(), c.name(), along, c.crackingHead(), c.loss());
        case Part.SiphonBreak s ->
            new Part.SiphonBreak(
                s.id(), s.name(), along, s.elevation(), s.diameter(), s.count(), s.coveredBy());
        case Part.Joint j ->
            new Part.Joint(j.id(), j.name(), along, j.elevation(), j.kind(), j.standsIn());
        case Part.Strainer s -> new Part.Strainer(s.id(), s.name(), along, s.loss());
        case Part.Restrictor r -> new Part.Restrictor(r.id(), r.name(), along, r.kv());
        case Part.Device d ->
            new Part.Device(
                d.id(),
                d.name(),
                along,
                d.kind(),
                d.elevation(),
                d.loss(),
                d.holds(),
                d.cupOverflow(),
                d.standsIn());
      };
    }
  }
}
