package dryfloor.app.paper;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.Point;
import dryfloor.app.drawing.Shape;
import dryfloor.app.drawing.Shape.Text.Anchor;
import dryfloor.app.drawing.Style;
import dryfloor.app.report.Movement;
import dryfloor.app.report.Wording;
import java.util.ArrayList;
import java.util.List;

/** From where to where the water went: a band for each way, as high as it carried water. */
final class WayPlot {

  private static final double WIDTH = 560;
  private static final double FROM = 190;
  private static final double TO = 370;
  private static final double LETTERS = 11;

  /** Height of the greatest and the smallest band. */
  private static final double GREATEST = 34;

  private static final double SMALLEST = 1.5;
  private static final double GAP = 22;

  /** Names are cut to fit their column. */
  private static final int LETTERS_OF_NAME = 28;

  /** More bands than these are in the table only. */
  private static final int MOST = 12;

  private WayPlot() {}

  static Elevation of(Wording wording, List<Movement> movements) {
    double most = movements.stream().mapToDouble(Movement::moved).max().orElse(1);
    List<Shape> shapes = new ArrayList<>();
    double y = 8;
    for (Movement movement : movements.subList(0, Math.min(MOST, movements.size()))) {
      double band = Math.max(SMALLEST, GREATEST * movement.moved() / most);
      double middle = y + Math.max(band, LETTERS) / 2 + 4;
      boolean wets = isFloor(wording, movement.to());
      double head = Math.max(band / 2 + 3, 6);
      shapes.add(
          Shape.box(
              FROM,
              middle - band / 2,
              TO - head,
              middle + band / 2,
              wets ? Style.SPILL_HEAD : Style.FLOW_HEAD));
      shapes.add(
          new Shape.Line(
              List.of(
                  new Point(TO - head, middle - head),
                  new Point(TO, middle),
                  new Point(TO - head, middle + head)),
              true,
              wets ? Style.SPILL_HEAD : Style.FLOW_HEAD));
      text(shapes, FROM - 8, middle + 4, name(wording, movement.from()), Anchor.END, Style.NAME);
      text(shapes, TO + 8, middle + 4, name(wording, movement.to()), Anchor.START, Style.NAME);
      text(
          shapes,
          (FROM + TO) / 2,
          middle - band / 2 - 4,
          wording.amounts().volume(movement.moved()),
          Anchor.MIDDLE,
          Style.FLOW_TEXT);
      y = middle + Math.max(band / 2, head) + GAP - 8;
    }
    return new Elevation(WIDTH, y, "Where the water went", shapes);
  }

  private static void text(
      List<Shape> shapes, double x, double y, String words, Anchor anchor, Style style) {
    shapes.add(new Shape.Text(new Point(x, y), words, anchor, LETTERS, style));
  }

  private static String name(Wording wording, String id) {
    String name = wording.names().label(id);
    return name.codePointCount(0, name.length()) <= LETTERS_OF_NAME
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LETTERS_OF_NAME - 1)).strip() + "…";
  }

  private static boolean isFloor(Wording wording, String id) {
    return id.equals(Ledger.BEYOND)
        || wording.installation().floors().stream().anyMatch(floor -> floor.id().equals(id));
  }
}
