package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where water went: arrows with litres, spills, wet floors. */
final class FlowPainter {

  private static final double STRIP = 10;

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;

  FlowPainter(Paper paper, Scene scene, Sheet sheet) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
  }

  /** Wet floors lie behind what stands on them. */
  void paintWetFloors() {
    paper.plan().rooms().forEach(this::wet);
  }

  void paint() {
    scene.flows().forEach(this::flow);
  }

  private void wet(Plan.Room room) {
    Optional<String> text = Optional.ofNullable(scene.wet().get(room.floor().id()));
    if (text.isEmpty()) {
      return;
    }
    double floor = paper.y(room.floor().elevation());
    sheet.add(
        Shape.box(
            paper.x(room.left()) + 2, floor - STRIP, paper.x(room.right()) - 2, floor, Style.WET));
    sheet.reserve(new Area(paper.x(room.left()), floor - STRIP, paper.x(room.right()), floor));
    Point middle = new Point(paper.x((room.left() + room.right()) / 2), floor);
    sheet.label(
        new Label(
            middle,
            List.of(new Sheet.LabelLine(scene.sign() + "  " + text.get(), 14, Style.WET_TEXT)),
            List.of(
                new Label.Wish(middle.moved(0, 5), Anchor.MIDDLE),
                new Label.Wish(middle.moved(0, -STRIP - 22), Anchor.MIDDLE),
                new Label.Wish(new Point(paper.x(room.left()) + 8, floor + 5), Anchor.START))));
  }

  private void flow(Scene.Flow flow) {
    switch (flow.kind()) {
      case PIPE -> pipe(flow, 1);
      case PIPE_BACKWARDS -> pipe(flow, -1);
      case EDGE -> edge(flow);
      case SPILL -> spill(flow);
      case PIPE_SPILL -> pipeSpill(flow);
      case SILL -> sill(flow);
    }
  }

  private void pipe(Scene.Flow flow, int way) {
    Optional<Pipe.Piece> longest =
        paper.plan().pipe(flow.path()).stream()
            .flatMap(pipe -> pipe.pieces().stream())
            .max(Comparator.comparingDouble(piece -> piece.length() * (piece.upright() ? 2 : 1)));
    longest.ifPresent(piece -> arrow(flow, piece, way));
  }

  private void arrow(Scene.Flow flow, Pipe.Piece piece, int way) {
    Point from = paper.at(piece.from());
    Point to = paper.at(piece.to());
    double length = Math.max(1, from.distanceTo(to));
    double right = way * (to.x() - from.x()) / length;
    double down = way * (to.y() - from.y()) / length;
    double size = Math.clamp(length / 60, 0.5, 1);
    Point middle = from.towards(to, 0.5 + 0.08 * way);
    sheet.add(
        Shape.line(
            middle.moved(-right * 26 * size, -down * 26 * size),
            middle.moved(right * 8 * size, down * 8 * size),
            Style.FLOW));
    sheet.add(
        Symbols.arrow(
            middle.moved(right * 20 * size, down * 20 * size),
            right,
            down,
            13 * size,
            Style.FLOW_HEAD));
    sheet.reserve(Area.around(middle, middle, 8));
    text(flow.text(), middle, 12, Style.FLOW_TEXT);
  }

  private void edge(Scene.Flow flow) {
    Optional<Tank> from = tank(flow.from());
    Optional<Tank> to = tank(flow.to());
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    boolean toTheRight = to.get().middle() > from.get().middle();
    double height = toTheRight ? from.get().rightTop() : from.get().leftTop();
    Point at = paper.at(toTheRight ? from.get().right() : from.get().left(), height);
    int way = toTheRight ? 1 : -1;
    sheet.add(
        new Shape.Line(
            List.of(at.moved(-14 * way, -9), at.moved(2 * way, -9), at.moved(7 * way, -2)),
            false,
            Style.FLOW));
    sheet.add(Symbols.arrow(at.moved(10 * way, 6), 0.4 * way, 0.92, 10, Style.FLOW_HEAD));
    text(flow.text(), at.moved(0, -12), 8, Style.FLOW_TEXT);
  }

  private void spill(Scene.Flow flow) {
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

  private void pipeSpill(Scene.Flow flow) {
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
    text(flow.text(), new Point(x, (start.getLast().y() + foot) / 2), 8, Style.WET_TEXT);
  }

  private double landing(String place) {
    return tank(place)
        .map(tank -> paper.y(tank.bottom()))
        .or(() -> paper.plan().room(place).map(room -> paper.y(room.floor().elevation())))
        .orElse(paper.bottom());
  }

  private void sill(Scene.Flow flow) {
    paper
        .plan()
        .room(flow.path())
        .ifPresent(
            room -> {
              Point edge = paper.at(room.right(), room.floor().elevation()).moved(-6, -16);
              sheet.add(Symbols.arrow(edge, 1, 0, 12, Style.SPILL_HEAD));
              text(flow.text(), edge.moved(-8, -6), 8, Style.WET_TEXT);
            });
  }

  private void text(String text, Point at, double clear, Style style) {
    sheet.label(
        new Label(at, List.of(new Sheet.LabelLine(text, 12, style)), Label.around(at, clear, 14)));
  }

  private Optional<Tank> tank(String id) {
    return Optional.ofNullable(paper.plan().tanks().get(id));
  }
}
