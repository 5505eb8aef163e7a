package dryfloor.app.paper;

import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.SvgWriter;
import gg.jte.Content;
import gg.jte.TemplateOutput;

/** A picture inside a page: markup of our own drawing code, which has escaped what users wrote. */
public final class Picture implements Content {

  private final String svg;
  private final String label;

  private Picture(String svg, String label) {
    this.svg = svg;
    this.label = label;
  }

  /**
   * A drawing as a picture.
   *
   * @param name of letters only, its own on the page
   */
  static Picture of(Elevation elevation, String name) {
    return new Picture(SvgWriter.inside(elevation, name), elevation.title());
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
