package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The way of a run up and down, from one of its ends. */
final class Course {

  /** A point of the run: how far from its first end, and how high (m). */
  record Point(double along, double elevation) {}

  private final List<Point> points = new ArrayList<>();

  Course(Installation drawn, Run run, End from) {
    points.add(new Point(0, drawn.elevationOf(run.from())));
    run.waypoints().forEach(bend -> points.add(new Point(bend.along(), bend.elevation())));
    points.add(new Point(run.length(), drawn.elevationOf(run.to())));
    if (from == End.SECOND) {
      points.sort((a, b) -> Double.compare(b.along(), a.along()));
    }
  }

  /** Where the first climb from this end passes an elevation (m along); none if it does not. */
  OptionalDouble climbsPast(double elevation) {
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      if (b.elevation() < a.elevation()) {
        return OptionalDouble.empty();
      }
      if (a.elevation() <= elevation && elevation < b.elevation()) {
        double part = (elevation - a.elevation()) / (b.elevation() - a.elevation());
        return OptionalDouble.of(a.along() + part * (b.along() - a.along()));
      }
    }
    return OptionalDouble.empty();
  }

  /** Its highest bend, if that lies above both ends. */
  Optional<Point> crest() {
    Point highest =
        points.stream().max((a, b) -> Double.compare(a.elevation(), b.elevation())).orElseThrow();
    boolean atAnEnd =
        highest.elevation() <= points.getFirst().elevation()
            || highest.elevation() <= points.getLast().elevation();
    return atAnEnd ? Optional.empty() : Optional.of(highest);
  }
}
