package dryfloor.app.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Water that left where it should not: over a rim, out at the foot of a wall, out of a pipe, over a
 * sill.
 */
final class SpillPainter {

  /** A hole in a wall is drawn so far above the bottom (points), to be seen beside it. */
  private static final double HOLE = 3;

  /** Water falls so far beside a wall (m), and a shorter way down than this is none (points). */
  private static final double AWAY = 0.12;

  private static final double FALL = 22;

  /** Points of a pipe that differ less in height (m) are as low as one another. */
  private static final double SAME_HEIGHT = 0.01;

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;

  SpillPainter(Paper paper, Scene scene, Sheet sheet) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
  }

  void overTheRim(Scene.Flow flow) {
    tank(flow.from())
        .ifPresent(
            tank -> {
              boolean left = roomLeft(tank) > roomRight(tank);
              double away = left ? -0.12 : 0.12;
              double wall = left ? tank.left() : tank.right();
              Point rim = paper.at(wall, tank.rim());
              double outside = paper.x(wall + away);
              down(flow, List.of(rim, rim.moved((outside - rim.x()) * 0.7, -2)), outside);
            });
  }

  /** A seam or a whole wall gives way at its foot, whatever stands in the vessel. */
  void outOfTheWall(Scene.Flow flow) {
    tank(flow.from()).ifPresent(tank -> outOfTheWall(flow, tank));
  }

  private void outOfTheWall(Scene.Flow flow, Tank tank) {
    int way = isOutside(tank, tank.left(), -1) ? -1 : 1;
    double wall = way < 0 ? tank.leftAt(tank.bottom()) : tank.rightAt(tank.bottom());
    Point hole = paper.at(wall, tank.bottom()).moved(0, -HOLE);
    double away = paper.scale() * Math.min(AWAY, 0.6 * roomInside(flow.to(), wall, way));
    if (scene.failed().contains(tank.id())) {
      sheet.add(new Shape.Circle(hole, 9, Style.FAILED));
    }
    if (landing(flow.to()) - hole.y() < FALL) {
      along(flow, hole, way);
    } else {
      down(flow, List.of(hole, hole.moved(way * away * 0.7, 2)), hole.x() + way * away);
    }
  }

  /** Whether a wall has no other vessel behind it. */
  private boolean isOutside(Tank tank, double wall, int way) {
    Point behind = new Point(wall + way * AWAY / 2, tank.bottom());
    return paper.plan().tanks().values().stream()
        .filter(other -> other.depth() == tank.depth() && !other.id().equals(tank.id()))
        .noneMatch(
            other ->
                behind.x() > other.left()
                    && behind.x() < other.right()
                    && behind.y() < other.rim()
                    && behind.y() >= other.support());
  }

  /** How far it is (m) from there to the wall of what catches the water; far where nothing does. */
  private double roomInside(String place, double from, int way) {
    return tank(place)
        .map(tank -> way < 0 ? from - tank.left() : tank.right() - from)
        .filter(room -> room > 0)
        .orElse(1.0);
  }

  /** Out of a hole that is as low as where the water lands. */
  private void along(Scene.Flow flow, Point hole, int way) {
    Point end = hole.moved(way * FALL, 0);
    sheet.add(Shape.line(hole, end, line(flow)));
    sheet.add(Symbols.arrow(end.moved(way * 8, 0), way, 0, 10, head(flow)));
    sheet.reserve(Area.around(hole, end, 4));
    sheet.label(Label.beside(flow.text(), hole.towards(end, 0.5), 8, words(flow)));
  }

  private double roomLeft(Tank tank) {
    return paper.plan().pipes().stream()
        .flatMap(pipe -> pipe.line().stream())
        .mapToDouble(point -> tank.left() - point.x())
        .filter(away -> away > 0)
        .min()
        .orElse(1);
  }

  private double roomRight(Tank tank) {
    return paper.plan().pipes().stream()
        .flatMap(pipe -> pipe.line().stream())
        .mapToDouble(point -> point.x() - tank.right())
        .filter(away -> away > 0)
        .min()
        .orElse(1);
  }

  void outOfThePipe(Scene.Flow flow) {
    Optional<Pipe> pipe = paper.plan().pipe(flow.path());
    Optional<Point> torn =
        pipe.stream()
            .flatMap(p -> p.fittings().stream())
            .filter(fixture -> scene.failed().contains(fixture.id()))
            .map(Pipe.Fixture::at)
            .findFirst();
    torn.or(() -> pipe.flatMap(p -> home(flow).map(tank -> nearest(p, tank))))
        .or(() -> pipe.flatMap(p -> mouth(p, flow.to())))
        .map(paper::at)
        .ifPresent(at -> outOfThePipe(flow, at));
  }

  private void outOfThePipe(Scene.Flow flow, Point at) {
    double beside =
        home(flow)
            .map(tank -> Math.clamp(at.x() + 14, paper.x(tank.left()) + 6, inside(tank)))
            .orElse(at.x() + 14);
    down(flow, List.of(at, at.moved((beside - at.x()) * 0.7, 3)), beside);
  }

  /** Of the lowest points of a pipe, the one that is nearest to the vessel. */
  private static Point nearest(Pipe pipe, Tank tank) {
    double lowest = pipe.line().stream().mapToDouble(Point::y).min().orElseThrow();
    return pipe.line().stream()
        .filter(point -> point.y() - lowest < SAME_HEIGHT)
        .min(Comparator.comparingDouble(point -> Math.abs(point.x() - tank.middle())))
        .orElseThrow();
  }

  private double inside(Tank tank) {
    return Math.max(paper.x(tank.left()) + 6, paper.x(tank.right()) - 6);
  }

  /** The vessel that the water lands in, where water is at home: no basin and no floor. */
  private Optional<Tank> home(Scene.Flow flow) {
    return paper.plan().installation().vessels().stream()
        .filter(vessel -> vessel.id().equals(flow.to()) && !vessel.isBasin())
        .findFirst()
        .flatMap(vessel -> tank(vessel.id()));
  }

  private Style line(Scene.Flow flow) {
    return home(flow).isPresent() ? Style.FLOW : Style.SPILL;
  }

  private Style head(Scene.Flow flow) {
    return home(flow).isPresent() ? Style.FLOW_HEAD : Style.SPILL_HEAD;
  }

  private Style words(Scene.Flow flow) {
    return home(flow).isPresent() ? Style.FLOW_TEXT : Style.WET_TEXT;
  }

  /** Where a pipe lets go of water that lands there: its lowest point above it, or its end. */
  private Optional<Point> mouth(Pipe pipe, String landing) {
    double floor = landing(landing);
    Comparator<Point> lowest = Comparator.comparingDouble(Point::y);
    Stream<Point> ends = Stream.of(pipe.line().getFirst(), pipe.line().getLast());
    Point low = pipe.line().stream().min(lowest).orElseThrow();
    return Stream.concat(Stream.of(low), ends.sorted(lowest))
        .filter(point -> paper.y(point.y()) <= floor + 1)
        .findFirst()
        .or(() -> Optional.of(low));
  }

  /** From these points on down to where the water lands. */
  private void down(Scene.Flow flow, List<Point> start, double x) {
    double landing = landing(flow.to());
    double foot = Math.max(start.getLast().y() + 12, landing);
    List<Point> line = new ArrayList<>(start);
    line.add(new Point(x, start.getLast().y() + 6));
    line.add(new Point(x, foot - 6));
    sheet.add(new Shape.Line(line, false, line(flow)));
    sheet.add(Symbols.arrow(new Point(x, foot), 0, 1, 10, head(flow)));
    sheet.reserve(Area.around(new Point(x, start.getLast().y()), new Point(x, foot), 4));
    sheet.label(
        Label.beside(flow.text(), new Point(x, (start.getLast().y() + foot) / 2), 8, words(flow)));
  }

  private double landing(String place) {
    return tank(place)
        .map(tank -> paper.y(surface(tank)))
        .or(() -> paper.plan().room(place).map(room -> paper.y(room.floor().elevation())))
        .orElse(paper.bottom());
  }

  /** Where falling water meets what stands in a vessel that is no basin. */
  private double surface(Tank tank) {
    boolean basin =
        paper.plan().installation().vessels().stream()
            .anyMatch(vessel -> vessel.id().equals(tank.id()) && vessel.isBasin());
    return Optional.ofNullable(scene.waters().get(tank.id()))
        .filter(water -> !basin)
        .map(water -> Math.clamp(water.after(), tank.bottom(), tank.rim()))
        .orElse(tank.bottom());
  }

  void overTheSill(Scene.Flow flow) {
    paper
        .plan()
        .room(flow.path())
        .ifPresent(
            room -> {
              Point edge = paper.at(room.right(), room.floor().elevation()).moved(-6, -16);
              sheet.add(Symbols.arrow(edge, 1, 0, 12, Style.SPILL_HEAD));
              sheet.label(Label.beside(flow.text(), edge.moved(-8, -6), 8, Style.WET_TEXT));
            });
  }

  private Optional<Tank> tank(String id) {
    return Optional.ofNullable(paper.plan().tanks().get(id));
  }
}
