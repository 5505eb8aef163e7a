package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What the numbers in a full picture stand for: a line for each, in as many columns as fit. */
final class NumberKey {

  private static final double SIZE = 11;
  private static final double LINE = 20;
  private static final double APART = 18;
  private static final double BELOW = 8;
  private static final double BESIDE_NUMBER = 2 * Label.DISC + 6;

  private final Sheet sheet;
  private final double left;
  private final double right;

  NumberKey(Sheet sheet, double left, double right) {
    this.sheet = sheet;
    this.left = left;
    this.right = right;
  }

  /** Paints it from there on and says how far down it reaches. */
  double paint(double top) {
    List<Label> key = sheet.key();
    if (key.isEmpty()) {
      return top;
    }
    double names = widest(key, label -> TextWidth.of(name(label), SIZE, Style.NAME)) + 6;
    double notes = widest(key, label -> TextWidth.of(note(label), SIZE, Style.NOTE));
    double wide = BESIDE_NUMBER + names + notes + APART;
    int columns = (int) Math.clamp(Math.floor((right - left + APART) / wide), 1, key.size());
    int rows = Math.ceilDiv(key.size(), columns);
    for (int i = 0; i < key.size(); i++) {
      int column = i / rows;
      Point at = new Point(left + column * wide, top + i % rows * LINE + LINE / 2);
      entry(i + 1, key.get(i), at, names);
    }
    return top + rows * LINE + BELOW;
  }

  private void entry(int number, Label label, Point at, double names) {
    sheet.numbered(Label.number(number, at.moved(Label.DISC, 0)).middle());
    Point words = at.moved(BESIDE_NUMBER, SIZE * 0.35);
    sheet.text(new Shape.Text(words, name(label), Anchor.START, SIZE, Style.NAME));
    sheet.text(new Shape.Text(words.moved(names, 0), note(label), Anchor.START, SIZE, Style.NOTE));
  }

  private static double widest(List<Label> key, ToDoubleFunction<Label> width) {
    return key.stream().mapToDouble(width).max().orElseThrow();
  }

  private static String name(Label label) {
    return label.lines().getFirst().text();
  }

  private static String note(Label label) {
    return label.lines().stream()
        .skip(1)
        .map(Sheet.LabelLine::text)
        .collect(Collectors.joining(", "));
  }
}
