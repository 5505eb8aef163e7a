package dryfloor.app.paper;

import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.SvgWriter;
import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.util.function.DoubleFunction;

/** A picture inside a page: markup of our own drawing code, which has escaped what users wrote. */
public final class Picture implements Content {

  private final String svg;
  private final String label;
  private final DoubleFunction<Picture> again;

  private Picture(String svg, String label, DoubleFunction<Picture> again) {
    this.svg = svg;
    this.label = label;
    this.again = again;
  }

  /**
   * A drawing as a picture.
   *
   * @param name of letters only, its own on the page
   */
  static Picture of(Elevation elevation, String name) {
    return new Picture(
        SvgWriter.inside(elevation, name), elevation.title(), high -> of(elevation, name));
  }

  /**
   * A drawing that can be drawn as high as there is room for.
   *
   * @param drawing for a height (points)
   * @param name of letters only, its own on the page
   */
  static Picture drawn(DoubleFunction<Elevation> drawing, String name) {
    return drawn(drawing, name, Elevation.HIGH_ON_A_PAGE);
  }

  private static Picture drawn(DoubleFunction<Elevation> drawing, String name, double high) {
    Elevation elevation = drawing.apply(high);
    return new Picture(
        SvgWriter.inside(elevation, name), elevation.title(), other -> drawn(drawing, name, other));
  }

  /** The same drawn so high (points), where it was not drawn once and for all. */
  Picture soHigh(double high) {
    return again.apply(high);
  }

  /** What it shows, for those who can't see it. */
  public String label() {
    return label;
  }

  @Override
  public void writeTo(TemplateOutput output) {
    output.writeContent(svg);
  }
}
