package dryfloor.app.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Water that left where it should not: down over a rim, out of a pipe, over a sill. */
final class SpillPainter {

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
    torn.or(() -> pipe.flatMap(p -> mouth(p, flow.to())))
        .map(paper::at)
        .ifPresent(at -> down(flow, List.of(at, at.moved(10, 3)), at.x() + 14));
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
    sheet.add(new Shape.Line(line, false, Style.SPILL));
    sheet.add(Symbols.arrow(new Point(x, foot), 0, 1, 10, Style.SPILL_HEAD));
    sheet.reserve(Area.around(new Point(x, start.getLast().y()), new Point(x, foot), 4));
    sheet.label(
        Label.beside(
            flow.text(), new Point(x, (start.getLast().y() + foot) / 2), 8, Style.WET_TEXT));
  }

  private double landing(String place) {
    return tank(place)
        .map(tank -> paper.y(tank.bottom()))
        .or(() -> paper.plan().room(place).map(room -> paper.y(room.floor().elevation())))
        .orElse(paper.bottom());
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
