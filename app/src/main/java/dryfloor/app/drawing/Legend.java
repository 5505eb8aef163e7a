package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.Set;
import java.util.stream.Collectors;

/** What the signs mean; only those that occur. */
final class Legend {

  private static final double SIZE = 10;
  private static final double LINE = 19;

  private final Sheet sheet;
  private final Symbols symbols;
  private final double left;
  private final double right;
  private double x;
  private double y;

  Legend(Sheet sheet, double left, double right, double top) {
    this.sheet = sheet;
    this.symbols = new Symbols(sheet);
    this.left = left;
    this.right = right;
    this.x = left;
    this.y = top;
  }

  /** Paints it and says how far down it reaches. */
  double paint(Plan plan, Scene scene) {
    swatch(Style.WATER, "water");
    swatch(Style.WATER_GONE, "water gone");
    swatch(Style.WATER_GAINED, "water gained");
    stroke(Style.LEVEL_BEFORE, "normal level");
    stroke(Style.LEVEL_AFTER, "level after");
    if (!scene.wet().isEmpty()) {
      swatch(Style.WET, "wet floor");
    }
    if (plan.pipes().stream()
        .flatMap(pipe -> Stretch.of(plan, pipe).stream())
        .anyMatch(Stretch::hidden)) {
      stroke(Style.PIPE_BEHIND, "pipe behind");
    }
    Set<Pipe.Kind> kinds =
        plan.pipes().stream()
            .flatMap(pipe -> pipe.fittings().stream())
            .map(Pipe.Fixture::kind)
            .collect(Collectors.toSet());
    for (Pipe.Kind kind : Pipe.Kind.values()) {
      if (kinds.contains(kind)) {
        entry(word(kind), at -> symbols.fixture(new Pipe.Fixture("", kind, at, 1, 0), at, false));
      }
    }
    if (!plan.installation().supplies().isEmpty()) {
      entry("supply", at -> symbols.end(Symbols.End.SUPPLY, at, false));
    }
    if (!plan.installation().drains().isEmpty()) {
      entry("drain", at -> symbols.end(Symbols.End.DRAIN, at.moved(0, -3), false));
    }
    if (!scene.failed().isEmpty()) {
      entry("failed", at -> sheet.add(new Shape.Circle(at, 7, Style.FAILED)));
    }
    return y + LINE;
  }

  private static String word(Pipe.Kind kind) {
    return switch (kind) {
      case PUMP -> "pump";
      case VALVE -> "valve";
      case FLOAT_VALVE -> "float valve";
      case CHECK_VALVE -> "check valve";
      case SIPHON_BREAK -> "siphon break";
      case JOINT -> "joint";
      case STRAINER -> "strainer";
      case RESTRICTOR -> "restrictor";
      case DEVICE -> "device";
    };
  }

  private void swatch(Style style, String text) {
    entry(text, at -> sheet.add(Shape.box(at.x() - 9, at.y() - 6, at.x() + 9, at.y() + 6, style)));
  }

  private void stroke(Style style, String text) {
    entry(text, at -> sheet.add(Shape.line(at.moved(-9, 0), at.moved(9, 0), style)));
  }

  private void entry(String text, Sign sign) {
    double width = 28 + TextWidth.of(text, SIZE, Style.SMALL) + 14;
    if (x + width > right) {
      x = left;
      y += LINE;
    }
    sign.at(new Point(x + 10, y + LINE / 2));
    sheet.text(
        new Shape.Text(
            new Point(x + 26, y + LINE / 2 + 3.5), text, Anchor.START, SIZE, Style.SMALL));
    x += width;
  }

  /** Draws a sign with its middle there. */
  private interface Sign {
    void at(Point middle);
  }
}
