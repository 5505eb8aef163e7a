package dryfloor.app.report;

import dryfloor.app.text.LineBreaks;
import java.util.ArrayList;
import java.util.List;

/** A report as it grows, line by line. */
final class Lines {

  private static final int WIDTH = 96;

  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  Lines(Ink ink) {
    this.ink = ink;
  }

  Ink ink() {
    return ink;
  }

  void add(String line) {
    lines.add(line);
  }

  void blank() {
    lines.add("");
  }

  void heading(String text) {
    blank();
    lines.add(ink.heading(text));
  }

  void table(TextTable table) {
    lines.addAll(table.lines(ink));
  }

  /** A paragraph, broken between words, every line indented. */
  void paragraph(String indent, String text) {
    paragraph(indent, indent, text);
  }

  /** A paragraph whose first line begins otherwise than the others. */
  void paragraph(String first, String others, String text) {
    List<String> broken = LineBreaks.broken(text, WIDTH - (double) others.length(), String::length);
    for (int i = 0; i < broken.size(); i++) {
      lines.add((i == 0 ? first : others) + broken.get(i));
    }
  }

  /** Everything, in characters that can be shown. */
  String text() {
    return ink.fit(String.join("\n", lines)) + "\n";
  }
}
