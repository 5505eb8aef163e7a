package dryfloor.app.paper;

import java.util.List;

/**
 * One sheet of a strip of marks at true scale, to be held against the glass. All measures are
 * millimetres, downwards from the top of the strip on this sheet.
 *
 * @param vessel its name
 * @param sheet which sheet of the vessel this is, as "1 of 2"
 * @param top what the upper end lines up with
 * @param said of the highest level; may be empty
 * @param length of the strip on this sheet (mm)
 * @param check length of the line by which the print is checked (mm), and what it must be
 */
public record MarkStrip(
    String vessel,
    String sheet,
    String top,
    String said,
    double length,
    Check check,
    List<Tick> ticks,
    List<Line> lines) {

  public MarkStrip {
    ticks = List.copyOf(ticks);
    lines = List.copyOf(lines);
  }

  /** A line that must be so long (mm) in print. */
  public record Check(double length, String words) {}

  /** A tick of the ruler: how far down, how long, and what stands beside it, if anything. */
  public record Tick(double down, double length, String label) {}

  /** A mark: how far down its line is, how far down its words are, and the words. */
  public record Line(double down, double wordsDown, String words) {}
}
