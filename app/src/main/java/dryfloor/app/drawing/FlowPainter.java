package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where water went: arrows with litres, and wet floors. */
final class FlowPainter {

  private static final double STRIP = 10;

  /** Less than this of a pipe (points) shows no motion. */
  private static final double TOO_SHORT = Shape.Stream.MARK;

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;
  private final SpillPainter spills;
  private final OptionalDouble travelled;

  FlowPainter(Paper paper, Scene scene, Sheet sheet, OptionalDouble travelled) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
    this.travelled = travelled;
    this.spills = new SpillPainter(paper, scene, sheet);
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
      case SPILL -> spills.overTheRim(flow);
      case WALL -> spills.outOfTheWall(flow);
      case PIPE_SPILL -> spills.outOfThePipe(flow);
      case SILL -> spills.overTheSill(flow);
    }
  }

  private void pipe(Scene.Flow flow, int way) {
    travelled.ifPresent(far -> paper.plan().pipe(flow.path()).ifPresent(p -> stream(p, way, far)));
    Optional<Pipe.Piece> longest =
        paper.plan().pipe(flow.path()).stream()
            .flatMap(pipe -> seen(pipe).stream())
            .max(Comparator.comparingDouble(piece -> piece.length() * (piece.upright() ? 2 : 1)));
    longest.ifPresent(piece -> arrow(flow, piece, way));
  }

  /** Marks that water takes with it where the pipe is seen. */
  private void stream(Pipe pipe, int way, double far) {
    double passed = 0;
    for (Stretch stretch : Stretch.of(paper.plan(), pipe)) {
      List<Point> line = stretch.line().stream().map(paper::at).toList();
      double length = length(line);
      if (!stretch.hidden() && length > TOO_SHORT) {
        // What is hidden is passed as well, so that marks come out where they would.
        sheet.add(new Shape.Stream(line, way * far - passed));
      }
      passed += length;
    }
  }

  private static double length(List<Point> line) {
    double length = 0;
    for (int i = 1; i < line.size(); i++) {
      length += line.get(i - 1).distanceTo(line.get(i));
    }
    return length;
  }

  /** The pieces that nothing hides; all of them where everything is hidden. */
  private List<Pipe.Piece> seen(Pipe pipe) {
    List<Pipe.Piece> seen =
        Stretch.of(paper.plan(), pipe).stream()
            .filter(stretch -> !stretch.hidden())
            .flatMap(stretch -> new Pipe(pipe.run(), stretch.line(), List.of()).pieces().stream())
            .toList();
    return seen.isEmpty() ? pipe.pieces() : seen;
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
    sheet.label(Label.beside(flow.text(), middle, 12, Style.FLOW_TEXT).ifThereIsRoom());
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
    sheet.label(Label.beside(flow.text(), at.moved(0, -12), 8, Style.FLOW_TEXT).ifThereIsRoom());
  }

  private Optional<Tank> tank(String id) {
    return Optional.ofNullable(paper.plan().tanks().get(id));
  }
}
