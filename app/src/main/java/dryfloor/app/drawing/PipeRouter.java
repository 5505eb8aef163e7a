package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Leads pipes from station to station. Heights are those of the drawing; sideways a pipe goes where
 * it is seen best: beside the vessels, and under the ceiling from one storey to the next. Going
 * sideways half-way up or down adds no crest and no low point.
 */
final class PipeRouter {

  /** As near to the bottom (m) as a hole in the bottom. */
  private static final double AT_BOTTOM = 0.005;

  private final Installation drawing;
  private final Map<String, Tank> tanks;
  private final Map<String, Point> ends;
  private final Map<Station, Double> leftEnds;
  private final Map<String, Station> stations = new HashMap<>();
  private final Channels channels;

  PipeRouter(
      Installation drawing,
      Map<String, Tank> tanks,
      Map<String, Point> ends,
      Map<Station, Double> leftEnds,
      double spacing) {
    this.drawing = drawing;
    this.tanks = tanks;
    this.ends = ends;
    this.leftEnds = leftEnds;
    this.channels = new Channels(spacing);
    leftEnds.keySet().forEach(station -> station.ids().forEach(id -> stations.put(id, station)));
  }

  Pipe pipe(Run run) {
    List<Double> heights = new ArrayList<>();
    heights.add(elevation(run.from()));
    run.waypoints().forEach(waypoint -> heights.add(waypoint.elevation()));
    heights.add(elevation(run.to()));
    Terminus from = terminus(run, run.from(), run.to(), heights.get(1));
    Terminus to = terminus(run, run.to(), run.from(), heights.get(heights.size() - 2));
    Course course = new Course(from, to, heights, firstOfSecondHalf(run, from, to));
    List<Point> line = course.line(jog(from, to));
    return new Pipe(run.id(), line, Fixtures.of(run, line));
  }

  private double elevation(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening -> opening.elevation();
      case RunEnd.AtJunction junction -> place(junction).y();
      case RunEnd.AtSupply supply -> place(supply).y();
      case RunEnd.AtDrain drain -> place(drain).y();
    };
  }

  private Point place(RunEnd end) {
    return Optional.ofNullable(ends.get(end.at())).orElseThrow();
  }

  private Terminus terminus(Run run, RunEnd end, RunEnd other, double next) {
    boolean right = towardsRight(run, end, other);
    return switch (end) {
      case RunEnd.Opening opening -> opening(run, opening, right, next);
      case RunEnd.AtJunction junction -> bare(junction.at(), right, true);
      case RunEnd.AtSupply supply -> bare(supply.at(), right, false);
      case RunEnd.AtDrain drain -> bare(drain.at(), right, false);
    };
  }

  private Terminus bare(String id, boolean right, boolean fixedHeight) {
    Point point = Optional.ofNullable(ends.get(id)).orElseThrow();
    Station station = station(id);
    double channel = channels.beside(station, leftEnd(station), right);
    return new Terminus(point, point.x(), channel, station.storey(), fixedHeight);
  }

  private Terminus opening(Run run, RunEnd.Opening opening, boolean right, double next) {
    Optional<Tank> found = Optional.ofNullable(tanks.get(opening.at()));
    if (found.isEmpty()) {
      return bare(Stations.floorOpening(run, opening), right, false);
    }
    Tank tank = found.get();
    Station station = station(tank.id());
    double channel = channels.beside(station, leftEnd(station), right);
    return switch (opening.kind()) {
      case STANDPIPE -> upright(opening, tank, right, channel, station);
      case FREE ->
          next > opening.elevation()
              ? upright(opening, tank, right, channel, station)
              : sideways(opening, channels.inside(tank, right), channel, station);
      case PORT ->
          opening.elevation() < tank.bottom() + AT_BOTTOM && next < opening.elevation()
              ? upright(opening, tank, right, channel, station)
              : sideways(
                  opening,
                  right ? tank.rightAt(opening.elevation()) : tank.leftAt(opening.elevation()),
                  channel,
                  station);
    };
  }

  private Terminus upright(
      RunEnd.Opening opening, Tank tank, boolean right, double channel, Station station) {
    double x = channels.inside(tank, right);
    return new Terminus(new Point(x, opening.elevation()), x, channel, station.storey(), false);
  }

  private static Terminus sideways(
      RunEnd.Opening opening, double x, double channel, Station station) {
    return new Terminus(
        new Point(x, opening.elevation()), channel, channel, station.storey(), false);
  }

  private boolean towardsRight(Run run, RunEnd end, RunEnd other) {
    double here = middle(run, end);
    double there = middle(run, other);
    double near = 0.2 * station(run, end).width();
    if (Math.abs(here - there) > near) {
      return there > here;
    }
    return switch (run.duty()) {
      case FEED -> true;
      case DRAIN, EMERGENCY -> false;
    };
  }

  private double middle(Run run, RunEnd end) {
    return Optional.ofNullable(tanks.get(end.at()))
        .map(Tank::middle)
        .orElseGet(
            () -> {
              Station station = station(run, end);
              return leftEnd(station) + station.width() / 2;
            });
  }

  private Station station(Run run, RunEnd end) {
    return Optional.ofNullable(stations.get(end.at()))
        .orElseGet(() -> station(Stations.floorOpening(run, end)));
  }

  private Station station(String id) {
    return Optional.ofNullable(stations.get(id)).orElseThrow();
  }

  private double leftEnd(Station station) {
    return Optional.ofNullable(leftEnds.get(station)).orElseThrow();
  }

  /** The first of the run's waypoints that belongs to its second end. */
  private int firstOfSecondHalf(Run run, Terminus from, Terminus to) {
    for (int i = 0; i < run.waypoints().size(); i++) {
      Run.Waypoint waypoint = run.waypoints().get(i);
      boolean atFrom = isOn(from.storey(), waypoint.elevation());
      boolean atTo = isOn(to.storey(), waypoint.elevation());
      boolean farther = atTo == atFrom && waypoint.along() > run.length() / 2;
      if ((atTo && !atFrom) || farther) {
        return i + 1;
      }
    }
    return run.waypoints().size() + 1;
  }

  private boolean isOn(String storey, double elevation) {
    return drawing.storeys().stream()
        .filter(candidate -> candidate.id().equals(storey))
        .anyMatch(
            found ->
                elevation >= found.elevation() && elevation <= found.elevation() + found.height());
  }

  /** The height at which a pipe goes from one storey's end to another's; none on one storey. */
  private Optional<Double> jog(Terminus from, Terminus to) {
    if (from.storey().equals(to.storey())) {
      return Optional.empty();
    }
    Storey upper =
        drawing.storeys().stream()
            .filter(s -> s.id().equals(from.storey()) || s.id().equals(to.storey()))
            .max(Comparator.comparingDouble(Storey::elevation))
            .orElseThrow();
    Storey below =
        drawing.storeys().stream()
            .filter(storey -> storey.elevation() < upper.elevation())
            .max(Comparator.comparingDouble(Storey::elevation))
            .orElseThrow();
    double ceiling = Math.min(below.elevation() + below.height(), upper.elevation());
    return Optional.of(channels.under(below.id(), ceiling));
  }
}
