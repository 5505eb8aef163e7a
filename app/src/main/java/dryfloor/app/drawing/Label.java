package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Text that looks for a place.
 *
 * @param anchor what it belongs to (points)
 * @param lines of text, from the top down
 * @param wishes places that would suit it, best first
 * @param dispensable whether a full sheet does without it
 */
record Label(Point anchor, List<Sheet.LabelLine> lines, List<Wish> wishes, boolean dispensable) {

  /** Radius of what the number of a key stands on (points). */
  static final double DISC = 8;

  /** Text that no sheet does without. */
  Label(Point anchor, List<Sheet.LabelLine> lines, List<Wish> wishes) {
    this(anchor, lines, wishes, false);
  }

  Label {
    lines = List.copyOf(lines);
    wishes = List.copyOf(wishes);
  }

  /**
   * A place that would suit.
   *
   * @param top middle, start or end of the upper edge (points)
   * @param anchor which of them
   */
  record Wish(Point top, Anchor anchor) {}

  /**
   * A place that is being thought of.
   *
   * @param dislike how much worse it is than the first wish (points² covered)
   * @param away whether it is so far off that a leader must show what it belongs to
   */
  record Spot(Wish wish, List<Shape.Text> texts, double dislike, boolean away) {

    Area area() {
      return texts.stream()
          .map(Shape.Text::area)
          .reduce(
              (a, b) ->
                  new Area(
                      Math.min(a.left(), b.left()),
                      Math.min(a.top(), b.top()),
                      Math.max(a.right(), b.right()),
                      Math.max(a.bottom(), b.bottom())))
          .orElseThrow();
    }
  }

  /** The wished places. */
  Stream<Spot> places() {
    return IntStream.range(0, wishes.size()).mapToObj(i -> spot(wishes.get(i), i * 12.0, false));
  }

  /** Places around, further and further off. */
  Stream<Spot> ring(int number) {
    double radius = 14.0 * number;
    return IntStream.range(0, 16)
        .mapToObj(
            i -> {
              double angle = Math.PI / 8 * i;
              Point top =
                  anchor.moved(radius * Math.cos(angle) * 1.4, radius * Math.sin(angle) - 8);
              Anchor side =
                  Math.abs(Math.cos(angle)) < 0.3
                      ? Anchor.MIDDLE
                      : Math.cos(angle) > 0 ? Anchor.START : Anchor.END;
              return spot(new Wish(top, side), 110 + 18.0 * number, true);
            });
  }

  private Spot spot(Wish wish, double dislike, boolean away) {
    return new Spot(wish, Sheet.stacked(lines, wish.top(), wish.anchor()), dislike, away);
  }

  /** At a place that was found for another label of the same thing. */
  Spot at(Spot known) {
    return spot(known.wish(), known.dislike(), known.away());
  }

  /** The same, if a full sheet does without it. */
  Label ifThereIsRoom() {
    return new Label(anchor, lines, wishes, true);
  }

  /** What it belongs to, whatever it says. */
  Owner owner() {
    return new Owner(anchor, lines.getFirst().style());
  }

  /** What a label belongs to: something at a point, and what sort of thing is said of it. */
  record Owner(Point anchor, Style style) {}

  /** The number of a label in a key, on what it belongs to or right beside it. */
  static Label number(int number, Point at) {
    List<Sheet.LabelLine> line =
        List.of(new Sheet.LabelLine(String.valueOf(number), 11, Style.NAME));
    List<Wish> wishes = new ArrayList<>();
    wishes.add(new Wish(at.moved(0, -DISC), Anchor.MIDDLE));
    wishes.addAll(around(at, 2 * DISC, 13));
    return new Label(at, line, wishes);
  }

  /** Right on what it belongs to. */
  Spot middle() {
    return spot(wishes.getFirst(), 0, false);
  }

  /** A single line that belongs beside a point, so far from it (points). */
  static Label beside(String text, Point at, double clear, Style style) {
    return new Label(at, List.of(new Sheet.LabelLine(text, 12, style)), around(at, clear, 14));
  }

  /** Beside a point: right, left, above, below. */
  private static List<Wish> around(Point point, double clear, double height) {
    return List.of(
        new Wish(point.moved(clear, -height / 2), Anchor.START),
        new Wish(point.moved(-clear, -height / 2), Anchor.END),
        new Wish(point.moved(0, -clear - height), Anchor.MIDDLE),
        new Wish(point.moved(0, clear), Anchor.MIDDLE));
  }
}
