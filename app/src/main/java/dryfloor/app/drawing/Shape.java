package dryfloor.app.drawing;

import java.util.List;

/** Something drawn on paper. Measures are points, y downwards from the top left corner. */
public sealed interface Shape {

  Style style();

  /** A line of straight pieces, closed into an area or not. */
  record Line(List<Point> points, boolean closed, Style style) implements Shape {
    public Line {
      points = List.copyOf(points);
    }
  }

  /** A circle. */
  record Circle(Point middle, double radius, Style style) implements Shape {}

  /**
   * A line of text.
   *
   * @param at where its base line begins, is in the middle or ends
   * @param size of the letters
   */
  record Text(Point at, String text, Anchor anchor, double size, Style style) implements Shape {

    /** Which point of the base line is given. */
    public enum Anchor {
      START,
      MIDDLE,
      END
    }

    /** The room that it takes, on the safe side for any common typeface. */
    Area area() {
      double width = TextWidth.of(text, size, style);
      double left =
          switch (anchor) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
          };
      return new Area(left, at.y() - size * 0.8, left + width, at.y() + size * 0.25);
    }
  }

  /**
   * A row of marks along a line, which water that flows takes with it.
   *
   * @param travelled how far the marks have come from the beginning of the line towards its end
   *     (points); negative where they go the other way
   */
  record Stream(List<Point> points, double travelled) implements Shape {

    /** Length of each mark (points). */
    public static final double MARK = 9;

    /** From mark to mark (points). */
    public static final double APART = 30;

    public Stream {
      points = List.copyOf(points);
    }

    @Override
    public Style style() {
      return Style.FLOW;
    }
  }

  /** A straight line. */
  static Line line(Point from, Point to, Style style) {
    return new Line(List.of(from, to), false, style);
  }

  /** An upright rectangle. */
  static Line box(double left, double top, double right, double bottom, Style style) {
    return new Line(
        List.of(
            new Point(left, top),
            new Point(right, top),
            new Point(right, bottom),
            new Point(left, bottom)),
        true,
        style);
  }
}
