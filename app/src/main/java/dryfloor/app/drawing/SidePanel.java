package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.List;

/** The words beside the building: what happened, and the levels. */
final class SidePanel {

  static final double WIDTH = 360;

  private static final double SIZE = 11.5;
  private static final double TIME_COLUMN = 88;
  private static final int MOST_MOMENTS = 14;

  private final Scene scene;
  private final Sheet sheet;
  private final double left;
  private double y;

  SidePanel(Scene scene, Sheet sheet, double left, double top) {
    this.scene = scene;
    this.sheet = sheet;
    this.left = left;
    this.y = top;
  }

  /** Paints it and says how far down it reaches. */
  double paint() {
    heading("What happens");
    scene.story().stream().limit(MOST_MOMENTS).forEach(this::moment);
    int more = scene.story().size() - MOST_MOMENTS;
    if (more > 0) {
      lines(List.of("and " + more + " more events"), left + TIME_COLUMN, Style.NOTE);
    }
    y += 14;
    heading("Levels above the floor of each vessel");
    row(new Scene.LevelLine("", "before", "after", "below rim"), Style.NOTE);
    scene.levels().forEach(line -> row(line, Style.STORY));
    return y;
  }

  private void heading(String text) {
    y += 16;
    sheet.text(new Shape.Text(new Point(left, y), text, Anchor.START, 13, Style.HEADING));
    y += 8;
  }

  private void moment(Scene.Moment moment) {
    double top = y + SIZE * 1.5;
    sheet.text(
        new Shape.Text(new Point(left, top), moment.time(), Anchor.START, SIZE, Style.STORY_TIME));
    lines(
        TextWidth.broken(moment.sentence(), WIDTH - TIME_COLUMN, SIZE, Style.STORY),
        left + TIME_COLUMN,
        Style.STORY);
    y += 3;
  }

  private void lines(List<String> lines, double x, Style style) {
    for (String line : lines) {
      y += SIZE * 1.45;
      sheet.text(new Shape.Text(new Point(x, y), line, Anchor.START, SIZE, style));
    }
  }

  private void row(Scene.LevelLine line, Style style) {
    y += SIZE * 1.5;
    String name = TextWidth.broken(line.name(), WIDTH - 205, SIZE, style).getFirst();
    sheet.text(new Shape.Text(new Point(left, y), name, Anchor.START, SIZE, style));
    cell(line.before(), WIDTH - 150, style);
    cell(line.after(), WIDTH - 78, style);
    cell(line.belowRim(), WIDTH, style);
  }

  private void cell(String text, double right, Style style) {
    sheet.text(new Shape.Text(new Point(left + right, y), text, Anchor.END, SIZE, style));
  }
}
