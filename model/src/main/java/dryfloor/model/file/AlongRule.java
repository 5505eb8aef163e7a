package dryfloor.model.file;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Where along a run something sits whose {@code along} is left out.
 *
 * <ul>
 *   <li>Waypoints: each leg of the run gets the vertical distance it has to cover and an equal
 *       share of the rest of the length.
 *   <li>A siphon break: where the run passes the height of the holes, nearest to the end in the
 *       vessel that covers them; nearest to the second end if none does.
 *   <li>A joint or device: where the run first passes its elevation.
 *   <li>Of these, one whose height the run never passes: at the point of its course nearest in
 *       height.
 *   <li>A float valve: at the second end.
 *   <li>Any other part: at the first end.
 *   <li>But never before the part listed ahead of it, nor behind the next one that says where it
 *       sits.
 * </ul>
 */
record AlongRule(
    RunEnd from,
    RunEnd to,
    double fromElevation,
    double toElevation,
    double length,
    List<Run.Waypoint> waypoints) {

  /** A place on the run's own line. */
  private record Station(double along, double elevation) {}

  /** Distances along (m) of these elevations, the first at 0 and the last at the full length. */
  static List<Double> spread(List<Double> elevations, double length) {
    double vertical = 0;
    for (int i = 1; i < elevations.size(); i++) {
      vertical += Math.abs(elevations.get(i) - elevations.get(i - 1));
    }
    int legs = elevations.size() - 1;
    double share = Math.max(0, length - vertical) / legs;
    double scale = vertical > length ? length / vertical : 1;
    List<Double> along = new ArrayList<>();
    double reached = 0;
    along.add(reached);
    for (int i = 1; i < elevations.size(); i++) {
      reached += scale * Math.abs(elevations.get(i) - elevations.get(i - 1)) + share;
      along.add(reached);
    }
    return along;
  }

  /** Where the run first passes this elevation (m along), or comes nearest to it. */
  double firstAt(double elevation) {
    return passes(elevation).getFirst();
  }

  /** Where a siphon break with holes at this elevation sits (m along). */
  double siphonBreakAt(double elevation, String coveredBy) {
    List<Double> places = passes(elevation);
    boolean first = from.at().equals(coveredBy) && !to.at().equals(coveredBy);
    return first ? places.getFirst() : places.getLast();
  }

  /** Where the run passes this elevation; where it comes nearest to it, if it never does. */
  private List<Double> passes(double elevation) {
    List<Station> course = course();
    List<Double> places = new ArrayList<>();
    for (int i = 1; i < course.size(); i++) {
      Station a = course.get(i - 1);
      Station b = course.get(i);
      if ((a.elevation() - elevation) * (b.elevation() - elevation) <= 0) {
        double rise = b.elevation() - a.elevation();
        double part = rise == 0 ? 0 : (elevation - a.elevation()) / rise;
        places.add(a.along() + part * (b.along() - a.along()));
      }
    }
    if (places.isEmpty()) {
      Station nearest =
          Collections.min(
              course,
              Comparator.comparingDouble(station -> Math.abs(station.elevation() - elevation)));
      places.add(nearest.along());
    }
    return places;
  }

  private List<Station> course() {
    List<Station> course = new ArrayList<>();
    course.add(new Station(0, fromElevation));
    waypoints.forEach(point -> course.add(new Station(point.along(), point.elevation())));
    course.add(new Station(length, toElevation));
    return course;
  }
}
