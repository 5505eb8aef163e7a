package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import dryfloor.model.element.Storey;

/** Storeys, slabs, sills and the scale of heights. */
final class BuildingPainter {

  private static final double TICK = 5;

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;

  BuildingPainter(Paper paper, Scene scene, Sheet sheet) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
  }

  void paint() {
    for (Storey storey : paper.plan().storeys()) {
      storey(storey);
    }
    paper.plan().rooms().forEach(this::sill);
    scale();
  }

  private void storey(Storey storey) {
    double floor = paper.y(storey.elevation());
    double ceiling = paper.y(storey.elevation() + storey.height());
    sheet.add(Shape.box(paper.left(), ceiling, paper.right(), floor, Style.ROOM));
    sheet.add(
        Shape.box(
            paper.left(),
            floor,
            paper.right(),
            paper.y(paper.plan().underside(storey)),
            Style.SLAB));
    String height = scene.heights().label(storey.elevation());
    sheet.text(
        new Shape.Text(
            new Point(paper.left() + 8, ceiling + 16),
            capital(storey.name()) + "  " + height,
            Anchor.START,
            11,
            Style.NOTE));
  }

  private static String capital(String name) {
    return name.isEmpty() ? name : Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  /** A low edge at the end of a room that has another beside it. */
  private void sill(Plan.Room room) {
    if (room.right() >= paper.plan().width()) {
      return;
    }
    double floor = paper.y(room.floor().elevation());
    double height = Math.max(3, paper.scale() * room.floor().sill());
    double x = paper.x(room.right());
    sheet.add(Shape.box(x - 2, floor - height, x + 2, floor, Style.SYMBOL_FILLED));
  }

  private void scale() {
    double step = paper.step(scene);
    double x = paper.left() - 14;
    double first = Math.ceil(paper.plan().bottom() / step) * step;
    for (double height = first; height <= paper.plan().top() + 1e-9; height += step) {
      Point tick = new Point(x, paper.y(height));
      sheet.add(Shape.line(tick.moved(-TICK, 0), tick, Style.RULE));
      sheet.text(
          new Shape.Text(
              tick.moved(-TICK - 4, 3.5),
              scene.heights().number(height),
              Anchor.END,
              10,
              Style.SMALL));
    }
    sheet.add(
        Shape.line(
            new Point(x, paper.y(paper.plan().top())), new Point(x, paper.bottom()), Style.RULE));
    sheet.text(
        new Shape.Text(
            new Point(x, paper.y(paper.plan().top()) - 8),
            scene.heights().unit(),
            Anchor.END,
            10,
            Style.SMALL));
  }
}
