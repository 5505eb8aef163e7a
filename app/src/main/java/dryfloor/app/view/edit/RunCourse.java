package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Heights of a run over its length. When one of them changes, distances along the run that followed
 * from heights follow again; those that somebody gave otherwise stay.
 */
final class RunCourse {

  /** So near (m) two places are the same. */
  private static final double SAME = 1e-3;

  private final Run run;
  private final List<Run.Waypoint> stations;

  private RunCourse(Run run, List<Run.Waypoint> stations) {
    this.run = run;
    this.stations = stations;
  }

  static RunCourse of(Installation drawing, Run run) {
    return new RunCourse(
        run,
        Stream.of(
                Stream.of(new Run.Waypoint(drawing.elevationOf(run.from()), 0)),
                run.waypoints().stream(),
                Stream.of(new Run.Waypoint(drawing.elevationOf(run.to()), run.length())))
            .flatMap(points -> points)
            .toList());
  }

  /** The same run with other heights, as many of them: what lay along it by height follows. */
  Run changedTo(Installation drawing, Run changed) {
    List<Run.Waypoint> waypoints =
        isSpread() ? of(drawing, changed).spreadWaypoints() : changed.waypoints();
    RunCourse next = of(drawing, changed.withWaypoints(waypoints));
    List<Part> moved =
        changed.parts().stream().map(part -> part.at(next.sameShare(this, part.along()))).toList();
    return next.fitted(moved, this);
  }

  /** The same run with other parts, those with a height of their own at that height. */
  Run withParts(List<Part> parts) {
    return fitted(parts, this);
  }

  private boolean isSpread() {
    List<Run.Waypoint> spread = spreadWaypoints();
    return IntStream.range(0, spread.size())
        .allMatch(i -> Math.abs(spread.get(i).along() - run.waypoints().get(i).along()) < SAME);
  }

  /** Each leg as long as it is high, and an equal share of what is left: as files are read. */
  private List<Run.Waypoint> spreadWaypoints() {
    int legs = stations.size() - 1;
    double vertical = IntStream.range(0, legs).mapToDouble(this::rise).sum();
    double share = Math.max(0, run.length() - vertical) / legs;
    double scale = vertical > run.length() ? run.length() / vertical : 1;
    List<Run.Waypoint> spread = new ArrayList<>();
    double along = 0;
    for (int leg = 0; leg < legs - 1; leg++) {
      along += scale * rise(leg) + share;
      spread.add(new Run.Waypoint(stations.get(leg + 1).elevation(), along));
    }
    return spread;
  }

  private double rise(int leg) {
    return Math.abs(stations.get(leg + 1).elevation() - stations.get(leg).elevation());
  }

  /** The place on this course that is as far on its leg as another was on that of the old one. */
  private double sameShare(RunCourse old, double along) {
    int leg = old.legAt(along);
    Run.Waypoint from = old.stations.get(leg);
    Run.Waypoint to = old.stations.get(leg + 1);
    double length = to.along() - from.along();
    double share = length > 0 ? Math.clamp((along - from.along()) / length, 0, 1) : 0;
    double start = stations.get(leg).along();
    return start + share * (stations.get(leg + 1).along() - start);
  }

  private int legAt(double along) {
    return IntStream.range(0, stations.size() - 1)
        .filter(leg -> along <= stations.get(leg + 1).along())
        .findFirst()
        .orElse(stations.size() - 2);
  }

  double elevationAt(double along) {
    int leg = legAt(along);
    Run.Waypoint from = stations.get(leg);
    Run.Waypoint to = stations.get(leg + 1);
    double length = to.along() - from.along();
    double share = length > 0 ? Math.clamp((along - from.along()) / length, 0, 1) : 0;
    return from.elevation() + share * (to.elevation() - from.elevation());
  }

  /**
   * Moves parts to their heights where they were at their heights before, and keeps their order.
   */
  private Run fitted(List<Part> parts, RunCourse before) {
    List<Part> fitted = new ArrayList<>();
    double last = 0;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      Part old = before.run.parts().get(i);
      OptionalDouble height = PartPlaces.height(part);
      OptionalDouble oldHeight = PartPlaces.height(old);
      boolean wasThere =
          oldHeight.isPresent()
              && Math.abs(before.elevationAt(old.along()) - oldHeight.getAsDouble()) < SAME;
      double place =
          height.isPresent() && wasThere
              ? passing(height.getAsDouble(), part.along())
              : part.along();
      last = Math.max(last, Math.clamp(place, 0, run.length()));
      fitted.add(part.at(last));
    }
    return run.withParts(fitted);
  }

  /** Where this course passes an elevation, or comes nearest to it; nearest to a wanted place. */
  private double passing(double elevation, double wanted) {
    List<Double> places = new ArrayList<>();
    for (int leg = 0; leg < stations.size() - 1; leg++) {
      Run.Waypoint from = stations.get(leg);
      Run.Waypoint to = stations.get(leg + 1);
      if ((from.elevation() - elevation) * (to.elevation() - elevation) <= 0) {
        double rise = to.elevation() - from.elevation();
        double share = rise == 0 ? 0 : (elevation - from.elevation()) / rise;
        places.add(from.along() + share * (to.along() - from.along()));
      }
    }
    return places.stream()
        .min(Comparator.comparingDouble(place -> Math.abs(place - wanted)))
        .orElseGet(
            () ->
                stations.stream()
                    .min(Comparator.comparingDouble(s -> Math.abs(s.elevation() - elevation)))
                    .map(Run.Waypoint::along)
                    .orElse(wanted));
  }
}
