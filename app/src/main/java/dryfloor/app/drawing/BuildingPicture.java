package dryfloor.app.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The building by itself, for a surface that has its own place for words and tables. Labels keep
 * their places while the water moves, as long as they fit there beside one another.
 */
public final class BuildingPicture {

  private static final double MARGIN = 64;

  /** Radius of the target round what is looked at (points). */
  private static final double TARGET = 24;

  /**
   * Points for each metre, before the surface zooms: a tall building gets fewer, so that its
   * letters can still be read when all of it is shown.
   */
  private static final double LARGEST_SCALE = 140;

  private static final double SMALLEST_SCALE = 60;

  /** A building had better be no taller than this (points). */
  private static final double HEIGHT = 1100;

  private final Paper paper;
  private final Map<Label.Owner, Label.Spot> places = new HashMap<>();

  private BuildingPicture(Paper paper) {
    this.paper = paper;
  }

  /** The picture of a building, its labels placed as suits this scene best. */
  public static BuildingPicture of(Plan plan, Scene labelled) {
    return of(plan, labelled, 1);
  }

  /**
   * The same with letters so many times as large beside the building: on a surface that shows all
   * of it, a building with fewer points for each metre has larger letters.
   */
  public static BuildingPicture of(Plan plan, Scene labelled, double letters) {
    BuildingPicture picture =
        new BuildingPicture(new Paper(plan, scale(plan) / letters, MARGIN, MARGIN));
    paint(picture.paper, labelled, picture.sheet(), OptionalDouble.empty());
    return picture;
  }

  private static double scale(Plan plan) {
    return Math.clamp(HEIGHT / (plan.top() - plan.bottom()), SMALLEST_SCALE, LARGEST_SCALE);
  }

  static void paint(Paper paper, Scene scene, Sheet sheet, OptionalDouble travelled) {
    TankPainter tanks = new TankPainter(paper, scene, sheet);
    PipePainter pipes = new PipePainter(paper, scene, sheet);
    FlowPainter flows = new FlowPainter(paper, scene, sheet, travelled);
    new BuildingPainter(paper, scene, sheet).paint();
    flows.paintWetFloors();
    tanks.paint();
    pipes.paint();
    flows.paint();
    tanks.label();
    pipes.label();
  }

  private Sheet sheet() {
    return new Sheet(new Area(0, 0, width(), height()), places);
  }

  /**
   * The building with the water of a scene, in the order of painting. A label stands where one of
   * the same thing stood before, unless it or another now says so much that they would cover each
   * other.
   */
  public List<Shape> shapes(Scene now) {
    return shapes(now, OptionalDouble.empty());
  }

  /**
   * The same with marks in the runs that water flows through.
   *
   * @param travelled how far the marks have come the way the water flows (points); empty for none
   */
  public List<Shape> shapes(Scene now, OptionalDouble travelled) {
    return shapes(now, travelled, List.of());
  }

  /**
   * The same with a target, which lies below the labels: what leads the eye to a place must not
   * cover what is said there.
   */
  public List<Shape> shapes(Scene now, OptionalDouble travelled, List<Shape> target) {
    Sheet sheet = sheet();
    paint(paper, now, sheet, travelled);
    target.forEach(sheet::add);
    return sheet.all();
  }

  /** Where something of the drawing lies on the paper: its middle, by its id. */
  public Optional<Point> place(String id) {
    return paper.plan().place(id).map(paper::at);
  }

  /**
   * A target round something of the drawing, to lead the eye there; nothing for what is not drawn.
   */
  public List<Shape> target(String id) {
    return place(id).stream()
        .<Shape>flatMap(
            at ->
                Stream.of(
                    new Shape.Circle(at, TARGET, Style.MARKED),
                    new Shape.Circle(at, TARGET + 5, Style.MARKED)))
        .toList();
  }

  /** The vessel, basin or run at or near a point of the paper, by its id. */
  public Optional<String> idAt(double x, double y) {
    return new Finder(paper).at(new Point(x, y));
  }

  /** The junction, supply or drain at a point of the paper, by its id. */
  public Optional<String> endAt(double x, double y) {
    return new Terminals(paper).end(new Point(x, y));
  }

  /** The innermost vessel or basin at a point of the paper, by its id. */
  public Optional<String> vesselAt(double x, double y) {
    return new Finder(paper).vessel(new Point(x, y));
  }

  /** The floor at a point of the paper, by its id. */
  public Optional<String> floorAt(double x, double y) {
    return new Terminals(paper).floor(new Point(x, y));
  }

  /** How far across the building (m) a point across the paper lies. */
  public double acrossAt(double x) {
    return (x - paper.left()) / paper.scale();
  }

  /** Every height that can be taken hold of. */
  public List<Handle> handles() {
    return Handles.of(paper.plan());
  }

  /** Width of the paper (points). */
  public double width() {
    return paper.right() + MARGIN;
  }

  /** Height of the paper (points). */
  public double height() {
    return paper.bottom() + MARGIN;
  }

  /** Elevation (m) that lies so far below the top of the paper (points). */
  public double elevationAt(double y) {
    return paper.plan().top() - (y - paper.top()) / paper.scale();
  }

  /** Where something of the building (m) lies on the paper (points). */
  public Point onPaper(Point inBuilding) {
    return paper.at(inBuilding);
  }
}
