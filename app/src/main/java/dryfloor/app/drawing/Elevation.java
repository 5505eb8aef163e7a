package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The finished picture.
 *
 * @param width of the paper (points)
 * @param height of the paper (points)
 * @param title for those who can't see it
 * @param shapes in the order of painting
 */
public record Elevation(double width, double height, String title, List<Shape> shapes) {

  private static final double MARGIN = 24;
  private static final double SCALE_COLUMN = 52;
  private static final double WIDEST_BUILDING = 800;
  private static final double HIGHEST_BUILDING = 900;
  private static final double HIGHEST_ON_A_PAGE = 500;

  /** Room for a legend, whatever the building (points). */
  private static final double NARROWEST = 420;

  /** Room for labels beside the building (points). */
  private static final double LABELS = 74;

  private static final double SMALLEST_SCALE = 70;
  private static final double LARGEST_SCALE = 230;

  public Elevation {
    shapes = List.copyOf(shapes);
  }

  /** Draws a scene in a building. */
  public static Elevation of(Plan plan, Scene scene) {
    double high = plan.top() - plan.bottom();
    double fitting = Math.min(WIDEST_BUILDING / plan.width(), HIGHEST_BUILDING / high);
    double scale = Math.clamp(fitting, SMALLEST_SCALE, LARGEST_SCALE);
    double left = MARGIN + SCALE_COLUMN;
    double panelLeft = left + Math.max(scale * plan.width(), NARROWEST) + LABELS + 10;
    double width = panelLeft + SidePanel.WIDTH + MARGIN;
    Header header = new Header(scene, width - 2 * MARGIN);
    Paper paper = new Paper(plan, scale, left, header.height() + MARGIN + 14);
    Sheet sheet = new Sheet(new Area(left, paper.top(), panelLeft - 10, paper.bottom() + 40));
    header.paint(sheet, MARGIN);
    BuildingPicture.paint(paper, scene, sheet, OptionalDouble.empty());
    double below = new Legend(sheet, left, panelLeft - 40, paper.bottom() + 44).paint(plan, scene);
    scaleBar(paper, scene, sheet, below + 18, width);
    double panel = new SidePanel(scene, sheet, panelLeft, header.height() + 6).paint();
    double bottom = closing(scene, sheet, Math.max(below + 34, panel + 20), width);
    return new Elevation(width, bottom, scene.title() + ". " + scene.sentence(), sheet.all());
  }

  /**
   * The building alone, on little paper: beside it a page says in its own words what happens. Fewer
   * points for each metre make the letters larger beside it.
   */
  public static Elevation alone(Plan plan, Scene scene) {
    double high = plan.top() - plan.bottom();
    double fitting = Math.min(WIDEST_BUILDING / plan.width(), HIGHEST_ON_A_PAGE / high);
    double scale = Math.clamp(fitting, SMALLEST_SCALE, LARGEST_SCALE);
    double left = MARGIN + SCALE_COLUMN;
    double right = left + Math.max(scale * plan.width(), NARROWEST) + LABELS;
    Paper paper = new Paper(plan, scale, left, MARGIN + 14);
    Sheet sheet = new Sheet(new Area(left, paper.top(), right, paper.bottom() + 40));
    BuildingPicture.paint(paper, scene, sheet, OptionalDouble.empty());
    double below = new Legend(sheet, left, right - 30, paper.bottom() + 44).paint(plan, scene);
    double lowest = scaleBar(paper, scene, sheet, below + 10, right + MARGIN);
    return new Elevation(
        right + MARGIN, lowest + 16.5, scene.title() + ". " + scene.sentence(), sheet.all());
  }

  /** Tells how low its words reach; a narrow building wants more than one line of them. */
  private static double scaleBar(Paper paper, Scene scene, Sheet sheet, double y, double width) {
    double length = paper.scale() * scene.heights().step();
    Point from = new Point(paper.left(), y);
    sheet.add(Shape.line(from, from.moved(length, 0), Style.LEVEL_AFTER));
    sheet.add(Shape.line(from.moved(0, -4), from.moved(0, 4), Style.RULE));
    sheet.add(Shape.line(from.moved(length, -4), from.moved(length, 4), Style.RULE));
    String text =
        scene.heights().number(scene.heights().step())
            + " "
            + scene.heights().unit()
            + ", heights and widths of vessels to one scale; where things stand side by side is"
            + " not drawn";
    Point words = from.moved(length + 8, 3.5);
    double lowest = words.y();
    for (String line : TextWidth.broken(text, width - MARGIN - words.x(), 10, Style.SMALL)) {
      lowest = words.y();
      sheet.text(new Shape.Text(words, line, Anchor.START, 10, Style.SMALL));
      words = words.moved(0, 13);
    }
    return lowest;
  }

  private static double closing(Scene scene, Sheet sheet, double top, double width) {
    double y = top;
    for (String line : TextWidth.broken(scene.closing(), width - 2 * MARGIN, 10, Style.SMALL)) {
      y += 14;
      sheet.text(new Shape.Text(new Point(MARGIN, y), line, Anchor.START, 10, Style.SMALL));
    }
    return y + MARGIN;
  }
}
