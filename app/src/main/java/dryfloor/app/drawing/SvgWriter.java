package dryfloor.app.drawing;

import dryfloor.model.file.VisibleText;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a picture as SVG 1.1, each shape with the style of its meaning as its class. */
public final class SvgWriter {

  private final StringBuilder svg = new StringBuilder();

  private SvgWriter() {}

  /** The text of an SVG file. */
  public static String write(Elevation elevation) {
    SvgWriter writer = new SvgWriter();
    writer.head(elevation);
    elevation.shapes().forEach(writer::shape);
    writer.svg.append("</svg>\n");
    return writer.svg.toString();
  }

  /**
   * The same to stand inside a page, without a prologue.
   *
   * @param prefix of the ids in it, letters only, so that several pictures fit on one page
   */
  public static String inside(Elevation elevation, String prefix) {
    String whole = write(elevation);
    return whole
        .substring(whole.indexOf("<svg"))
        .replace("url(#", "url(#" + prefix)
        .replace("<pattern id=\"", "<pattern id=\"" + prefix);
  }

  private void head(Elevation elevation) {
    String width = number(elevation.width());
    String height = number(elevation.height());
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + width)
        .append("\" height=\"" + height + "\" viewBox=\"0 0 " + width + " " + height + "\">\n")
        .append("<title>" + escaped(elevation.title()) + "</title>\n")
        .append("<style>\n" + SvgStyleSheet.TEXT + "</style>\n")
        .append(SvgStyleSheet.PATTERNS)
        .append("<rect class=\"paper\" width=\"" + width + "\" height=\"" + height + "\"/>\n");
  }

  private void shape(Shape shape) {
    String style = shape.style().word();
    switch (shape) {
      case Shape.Line line ->
          svg.append(line.closed() ? "<polygon" : "<polyline")
              .append(" class=\"" + style + "\" points=\"" + points(line.points()) + "\"/>\n");
      case Shape.Stream stream ->
          svg.append("<polyline class=\"" + style + "\" points=\"" + points(stream.points()))
              .append("\" stroke-dasharray=\"" + number(Shape.Stream.MARK))
              .append(" " + number(Shape.Stream.APART - Shape.Stream.MARK))
              .append("\" stroke-dashoffset=\"" + number(-stream.travelled()) + "\"/>\n");
      case Shape.Circle circle ->
          svg.append("<circle class=\"" + style + "\" cx=\"" + number(circle.middle().x()))
              .append("\" cy=\"" + number(circle.middle().y()))
              .append("\" r=\"" + number(circle.radius()) + "\"/>\n");
      case Shape.Text text ->
          svg.append("<text class=\"" + style + "\" x=\"" + number(text.at().x()))
              .append("\" y=\"" + number(text.at().y()))
              .append("\" font-size=\"" + number(text.size()))
              .append("\" text-anchor=\"" + text.anchor().name().toLowerCase(Locale.ROOT))
              .append("\">" + escaped(text.text()) + "</text>\n");
    }
  }

  private static String points(List<Point> points) {
    return points.stream()
        .map(point -> number(point.x()) + "," + number(point.y()))
        .collect(Collectors.joining(" "));
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
  }

  /** Text that XML can hold: its own signs replaced, what it can't hold spelled out. */
  private static String escaped(String text) {
    return VisibleText.of(text)
        .codePoints()
        .mapToObj(
            c ->
                switch (c) {
                  case '&' -> "&amp;";
                  case '<' -> "&lt;";
                  case '>' -> "&gt;";
                  default -> Character.toString(c);
                })
        .collect(Collectors.joining());
  }
}
