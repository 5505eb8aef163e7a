package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.List;

/** Title and verdict across the top. */
final class Header {

  private static final double SENTENCE_SIZE = 15;

  private final Scene scene;
  private final List<String> sentence;

  Header(Scene scene, double width) {
    this.scene = scene;
    this.sentence =
        TextWidth.broken(
            scene.sign() + "  " + scene.sentence(), width, SENTENCE_SIZE, scene.verdict());
  }

  double height() {
    return 66 + sentence.size() * SENTENCE_SIZE * 1.4 + 10;
  }

  void paint(Sheet sheet, double left) {
    text(sheet, left, 36, scene.title(), 20, Style.TITLE);
    text(sheet, left, 56, scene.subtitle(), 12, Style.SUBTITLE);
    double y = 66;
    for (String line : sentence) {
      y += SENTENCE_SIZE * 1.4;
      text(sheet, left, y, line, SENTENCE_SIZE, scene.verdict());
    }
  }

  private static void text(Sheet sheet, double x, double y, String text, double size, Style style) {
    sheet.text(new Shape.Text(new Point(x, y), text, Anchor.START, size, style));
  }
}
