package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import dryfloor.model.Installation;
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

  /**
   * Width of a picture for a page (points). Across an A4 sheet between its margins the smallest
   * letters, of ten points here, are five points high; so a large building is drawn on as much
   * paper as a small one and has larger letters beside it.
   */
  public static final double ON_A_PAGE = 1032;

  /** Height of a picture for a page that has no room to fill (points). */
  public static final double HIGH_ON_A_PAGE = 480;

  /** A building on a page has at least so many points for each metre, however large it is. */
  private static final double SMALLEST_ON_A_PAGE = 10;

  /** A smaller building may have another line in its key. */
  private static final double KEY_GROWS = 20;

  /** Room for a legend beside a building. */
  private static final double LEGEND_BESIDE = 200;

  /** Above a building on a page, and below it with the bar of its scale. */
  private static final double ABOVE = MARGIN + 14;

  private static final double BELOW = 64;

  /** So many times as much room beside vessels as they need, the most first. */
  private static final List<Double> ROOMS = List.of(8.0, 6.0, 5.0, 4.0, 3.0, 2.5, 2.0, 1.5);

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
   * The building alone, for a page that says in its own words what happens: as wide as a sheet, so
   * high (points) if it can be. Labels that say nothing of the failure are left out where they
   * would stand in the way of those that do, and what would stand far off is told in a key below.
   */
  public static Elevation onAPage(Installation drawing, Scene scene, double high) {
    Elevation picture = drawnOnAPage(drawing, scene, high);
    double over = picture.height() - high;
    return over > 0 ? drawnOnAPage(drawing, scene, high - over - KEY_GROWS) : picture;
  }

  private static Elevation drawnOnAPage(Installation drawing, Scene scene, double high) {
    OnAPage chosen = OnAPage.of(drawing, scene, high);
    boolean isBeside = chosen.beside() > 0;
    double left = MARGIN + SCALE_COLUMN;
    double right = ON_A_PAGE - MARGIN - chosen.beside();
    Paper paper = new Paper(chosen.plan(), chosen.scale(), left, ABOVE);
    Sheet sheet = Sheet.brief(new Area(left, paper.top(), right, paper.bottom() + 30));
    BuildingPicture.paint(paper, scene, sheet, OptionalDouble.empty());
    double reached =
        new Legend(
                sheet,
                isBeside ? right + 16 : left,
                ON_A_PAGE - MARGIN,
                isBeside ? paper.top() : paper.bottom() + 34)
            .paint(chosen.plan(), scene);
    double below = isBeside ? paper.bottom() + 40 : reached + 14;
    double scale = Math.max(scaleBar(paper, scene, sheet, below, ON_A_PAGE), reached);
    double lowest = new NumberKey(sheet, left, ON_A_PAGE - MARGIN).paint(scale + 12);
    return new Elevation(ON_A_PAGE, lowest, scene.title() + ". " + scene.sentence(), sheet.all());
  }

  private static double legendBelow(Plan plan, Scene scene) {
    Sheet nowhere = new Sheet(new Area(0, 0, 0, 0));
    return new Legend(nowhere, MARGIN + SCALE_COLUMN, ON_A_PAGE - MARGIN, 0).paint(plan, scene);
  }

  /**
   * How a building goes on a page.
   *
   * @param plan with as much room beside the vessels as there is
   * @param scale points for each metre
   * @param beside room for a legend beside it, none where that stands below
   */
  private record OnAPage(Plan plan, double scale, double beside) {

    static OnAPage of(Installation drawing, Scene scene, double high) {
      OnAPage close = of(Plan.of(drawing), scene, high);
      return ROOMS.stream()
          .map(room -> of(Plan.of(drawing, room), scene, high))
          .filter(roomy -> roomy.scale() >= close.scale())
          .findFirst()
          .orElse(close);
    }

    private static OnAPage of(Plan plan, Scene scene, double high) {
      OnAPage aside = of(plan, LEGEND_BESIDE, high - ABOVE - BELOW);
      OnAPage above = of(plan, 0, high - ABOVE - BELOW - legendBelow(plan, scene));
      return aside.scale() > above.scale() ? aside : above;
    }

    private static OnAPage of(Plan plan, double beside, double high) {
      double wide = ON_A_PAGE - 2 * MARGIN - SCALE_COLUMN - LABELS - beside;
      double fitting = Math.min(wide / plan.width(), high / (plan.top() - plan.bottom()));
      return new OnAPage(plan, Math.clamp(fitting, SMALLEST_ON_A_PAGE, LARGEST_SCALE), beside);
    }
  }

  /** Tells how low its words reach; a narrow building wants more than one line of them. */
  private static double scaleBar(Paper paper, Scene scene, Sheet sheet, double y, double width) {
    double step = paper.step(scene);
    double length = paper.scale() * step;
    Point from = new Point(paper.left(), y);
    sheet.add(Shape.line(from, from.moved(length, 0), Style.LEVEL_AFTER));
    sheet.add(Shape.line(from.moved(0, -4), from.moved(0, 4), Style.RULE));
    sheet.add(Shape.line(from.moved(length, -4), from.moved(length, 4), Style.RULE));
    String text =
        scene.heights().number(step)
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
