package dryfloor.analysis.failure;

import dryfloor.model.element.Drain;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How high a run lies along its length: straight between its ends and waypoints. */
final class RunProfile {

  /** Two places within this height (m) and with nothing higher between are the same low stretch. */
  private static final double SAME_HEIGHT = 0.01;

  private final Drawing drawing;
  private final Run run;
  private final List<Point> points = new ArrayList<>();

  /**
   * A place on a run.
   *
   * @param along distance from the first end (m)
   * @param elevation of the run there (m)
   */
  record Point(double along, double elevation) {}

  RunProfile(Drawing drawing, Run run) {
    this.drawing = drawing;
    this.run = run;
    points.add(new Point(0, elevation(run.from())));
    run.waypoints().forEach(point -> points.add(new Point(point.along(), point.elevation())));
    points.add(new Point(run.length(), elevation(run.to())));
  }

  /** Elevation of the run (m) at a distance from its first end (m). */
  double elevationAt(double along) {
    for (int i = 1; i < points.size(); i++) {
      Point before = points.get(i - 1);
      Point after = points.get(i);
      if (along <= after.along() && after.along() > before.along()) {
        double share = Math.max(0, (along - before.along()) / (after.along() - before.along()));
        return before.elevation() + share * (after.elevation() - before.elevation());
      }
    }
    return points.getLast().elevation();
  }

  /**
   * The lowest place at which the run can come apart outside the vessels that its ends reach into;
   * none for a run that stays inside them. The stretch between a free end and the rim or bottom,
   * and the one between a standpipe's lip and the bottom it passes through, lie inside. Where a run
   * that ends elsewhere passes through a wall is not drawn, so all of it counts as outside. Where
   * that leaves nothing but a straight stretch between two ends, it comes apart halfway: there it
   * is outside for sure.
   */
  Optional<Point> lowestOutside() {
    Outside first = outside(points, run.from(), run.to());
    Outside second = outside(points.reversed(), run.to(), run.from());
    return Stream.concat(first.points().stream(), second.points().stream())
        .filter(point -> point.along() > first.from() || first.points().contains(point))
        .filter(point -> point.along() < second.from() || second.points().contains(point))
        .min(Comparator.comparingDouble(Point::elevation))
        .or(() -> halfway(first.from(), second.from()));
  }

  private Optional<Point> halfway(double first, double second) {
    double along = (first + second) / 2;
    return first < second ? Optional.of(new Point(along, elevationAt(along))) : Optional.empty();
  }

  /**
   * What lies outside the vessel at one end.
   *
   * @param from where it leaves the vessel (m from the first end)
   * @param points on its way from there to the other end
   */
  private record Outside(double from, List<Point> points) {}

  /** Whether one of the run's joints sits at this low place, give or take 10 mm. */
  boolean hasJointAt(Point low) {
    return run.parts().stream()
        .anyMatch(part -> part instanceof Part.Joint joint && sameLowStretch(joint, low));
  }

  private boolean sameLowStretch(Part.Joint joint, Point low) {
    double first = Math.min(joint.along(), low.along());
    double last = Math.max(joint.along(), low.along());
    boolean nothingHigherBetween =
        points.stream()
            .filter(point -> point.along() > first && point.along() < last)
            .allMatch(point -> point.elevation() <= low.elevation() + SAME_HEIGHT);
    return Math.abs(joint.elevation() - low.elevation()) <= SAME_HEIGHT && nothingHigherBetween;
  }

  /** Where the run leaves the vessel at its end, which is the first point. */
  private Outside outside(List<Point> fromEnd, RunEnd end, RunEnd other) {
    double start = fromEnd.getFirst().along();
    Outside withEnd = new Outside(start, fromEnd);
    Outside withoutEnd = new Outside(start, fromEnd.subList(1, fromEnd.size()));
    if (!(end instanceof Opening opening)) {
      return withEnd;
    }
    if (opening.kind() == Opening.Kind.PORT) {
      return withEnd;
    }
    if (!drawing.isVessel(opening.at())) {
      return opening.kind() == Opening.Kind.FREE ? withoutEnd : withEnd;
    }
    Vessel vessel = drawing.vessel(opening.at());
    boolean overTheRim = opening.kind() == Opening.Kind.FREE;
    if (overTheRim && opening.elevation() >= vessel.rim()) {
      return withoutEnd;
    }
    Outside nowhere = new Outside(fromEnd.getLast().along(), List.of());
    return beyond(fromEnd, vessel, overTheRim)
        .orElse(endsElsewhere(vessel.id(), other) ? withoutEnd : nowhere);
  }

  /** From the first point on that is above the rim, if that leads out, or below the bottom. */
  private static Optional<Outside> beyond(
      List<Point> points, Vessel vessel, boolean overTheRimIsOut) {
    for (int i = 1; i < points.size(); i++) {
      Point inside = points.get(i - 1);
      Point outside = points.get(i);
      boolean isOver = overTheRimIsOut && outside.elevation() >= vessel.rim();
      if (isOver || outside.elevation() < vessel.bottom()) {
        double edge = isOver ? vessel.rim() : vessel.bottom();
        double share = (edge - inside.elevation()) / (outside.elevation() - inside.elevation());
        double along = inside.along() + share * (outside.along() - inside.along());
        List<Point> rest = new ArrayList<>(points.subList(i, points.size()));
        rest.addFirst(new Point(along, edge));
        return Optional.of(new Outside(along, rest));
      }
    }
    return Optional.empty();
  }

  /** Whether an end is surely in no vessel that this one holds or stands in; a junction may be. */
  private boolean endsElsewhere(String vessel, RunEnd end) {
    return switch (end) {
      case Opening opening -> !isWithin(opening.at(), vessel) && !isWithin(vessel, opening.at());
      case RunEnd.AtJunction junction -> false;
      case RunEnd.AtSupply supply -> true;
      case RunEnd.AtDrain drain -> true;
    };
  }

  private boolean isWithin(String place, String vessel) {
    return place.equals(vessel)
        || (drawing.isVessel(place) && isWithin(drawing.vessel(place).standsIn(), vessel));
  }

  private double elevation(RunEnd end) {
    return switch (end) {
      case Opening opening -> opening.elevation();
      case RunEnd.AtJunction junction -> drawing.element(Junction.class, junction.at()).elevation();
      case RunEnd.AtSupply supply -> drawing.element(Supply.class, supply.at()).elevation();
      case RunEnd.AtDrain drain -> drawing.element(Drain.class, drain.at()).elevation();
    };
  }
}
