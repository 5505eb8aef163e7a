package dryfloor.app.drawing;

import java.util.List;

/** Signs for what sits in and at the ends of pipes; our own, named in the legend. */
final class Symbols {

  private static final double SIZE = 7;

  private final Sheet sheet;

  Symbols(Sheet sheet) {
    this.sheet = sheet;
  }

  /** What a pipe can end at, other than a vessel. */
  enum End {
    SUPPLY,
    DRAIN,
    JUNCTION,
    FLOOR_OPENING
  }

  void fixture(Pipe.Fixture fixture, Point at, boolean failed) {
    // On paper y grows downwards.
    double right = fixture.right();
    double down = -fixture.up();
    sheet.reserve(Area.around(at, at, SIZE));
    switch (fixture.kind()) {
      case PUMP -> {
        sheet.add(new Shape.Circle(at, SIZE + 1, Style.SYMBOL));
        sheet.add(
            arrow(
                at.moved(right * SIZE, down * SIZE), right, down, SIZE * 1.6, Style.SYMBOL_FILLED));
      }
      case VALVE, FLOAT_VALVE -> valve(fixture, at, right, down);
      case CHECK_VALVE -> {
        sheet.add(
            arrow(at.moved(right * SIZE, down * SIZE), right, down, SIZE * 1.7, Style.SYMBOL));
        sheet.add(across(at.moved(right * SIZE, down * SIZE), right, down, SIZE, Style.WALL));
      }
      case SIPHON_BREAK -> sheet.add(new Shape.Circle(at, SIZE * 0.7, Style.BREAK_OPEN));
      case JOINT -> {
        sheet.add(across(at.moved(right * -1.6, down * -1.6), right, down, SIZE * 0.8, Style.WALL));
        sheet.add(across(at.moved(right * 1.6, down * 1.6), right, down, SIZE * 0.8, Style.WALL));
      }
      case STRAINER -> box(at, SIZE * 0.8, Style.WATER_GONE);
      case RESTRICTOR -> {
        sheet.add(across(at, right, down, SIZE * 0.9, Style.WALL));
        sheet.add(new Shape.Circle(at, 2, Style.SYMBOL_FILLED));
      }
      case DEVICE -> box(at, SIZE * 1.3, Style.SYMBOL);
    }
    if (failed) {
      sheet.add(new Shape.Circle(at, SIZE * 1.8, Style.FAILED));
    }
  }

  void end(End end, Point at, boolean failed) {
    sheet.reserve(Area.around(at, at.moved(0, 3), SIZE));
    switch (end) {
      case SUPPLY -> {
        box(at, SIZE, Style.SYMBOL);
        sheet.add(arrow(at.moved(SIZE * 0.7, 0), 1, 0, SIZE * 1.4, Style.FLOW_HEAD));
      }
      case DRAIN -> {
        sheet.add(
            new Shape.Line(
                List.of(
                    at.moved(-SIZE, -2),
                    at.moved(SIZE, -2),
                    at.moved(SIZE * 0.4, 9),
                    at.moved(-SIZE * 0.4, 9)),
                true,
                Style.SYMBOL));
      }
      case JUNCTION -> sheet.add(new Shape.Circle(at, 3.5, Style.SYMBOL_FILLED));
      case FLOOR_OPENING -> {
        sheet.add(Shape.line(at.moved(-SIZE, 0), at.moved(SIZE, 0), Style.WALL));
        sheet.add(Shape.line(at.moved(-SIZE, 3), at.moved(SIZE, 3), Style.RULE));
      }
    }
    if (failed) {
      sheet.add(new Shape.Circle(at, SIZE * 1.8, Style.FAILED));
    }
  }

  private void valve(Pipe.Fixture fixture, Point at, double right, double down) {
    Point one = at.moved(right * -SIZE, down * -SIZE);
    Point other = at.moved(right * SIZE, down * SIZE);
    double half = SIZE * 0.75;
    sheet.add(
        new Shape.Line(
            List.of(
                one.moved(down * half, -right * half),
                one.moved(-down * half, right * half),
                other.moved(down * half, -right * half),
                other.moved(-down * half, right * half)),
            true,
            Style.SYMBOL));
    if (fixture.kind() == Pipe.Kind.FLOAT_VALVE) {
      Point bulb = at.moved(down * SIZE * 1.4, -right * SIZE * 1.4);
      sheet.add(Shape.line(at, bulb, Style.RULE));
      sheet.add(new Shape.Circle(bulb, 3.2, Style.SYMBOL));
    }
  }

  private void box(Point at, double half, Style style) {
    sheet.add(Shape.box(at.x() - half, at.y() - half, at.x() + half, at.y() + half, style));
  }

  private static Shape.Line across(Point at, double right, double down, double half, Style style) {
    return Shape.line(
        at.moved(down * half, -right * half), at.moved(-down * half, right * half), style);
  }

  /** A triangle with its point there, looking in this direction. */
  static Shape.Line arrow(Point tip, double right, double down, double size, Style style) {
    Point foot = tip.moved(-right * size, -down * size);
    double half = size * 0.5;
    return new Shape.Line(
        List.of(
            tip, foot.moved(down * half, -right * half), foot.moved(-down * half, right * half)),
        true,
        style);
  }
}
