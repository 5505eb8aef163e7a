package dryfloor.app.drawing;

import java.util.List;

/**
 * The building by itself, for a surface that has its own place for words and tables. Labels keep
 * their places while the water moves.
 */
public final class BuildingPicture {

  private static final double MARGIN = 64;

  /** Points for each metre, before the surface zooms. */
  private static final double SCALE = 140;

  private final Paper paper;
  private final List<Shape> labels;

  private BuildingPicture(Paper paper, List<Shape> labels) {
    this.paper = paper;
    this.labels = labels;
  }

  /** The picture of a building, with the labels of a scene. */
  public static BuildingPicture of(Plan plan, Scene labelled) {
    Paper paper = new Paper(plan, SCALE, MARGIN, MARGIN);
    Sheet sheet = sheetOf(paper);
    paint(paper, labelled, sheet);
    return new BuildingPicture(paper, sheet.labels());
  }

  static void paint(Paper paper, Scene scene, Sheet sheet) {
    TankPainter tanks = new TankPainter(paper, scene, sheet);
    PipePainter pipes = new PipePainter(paper, scene, sheet);
    FlowPainter flows = new FlowPainter(paper, scene, sheet);
    new BuildingPainter(paper, scene, sheet).paint();
    flows.paintWetFloors();
    tanks.paint();
    pipes.paint();
    flows.paint();
    tanks.label();
    pipes.label();
  }

  private static Sheet sheetOf(Paper paper) {
    return new Sheet(new Area(0, 0, paper.right() + MARGIN, paper.bottom() + MARGIN));
  }

  /** The building with the water of a scene, without labels, in the order of painting. */
  public List<Shape> shapes(Scene now) {
    Sheet sheet = sheetOf(paper);
    new BuildingPainter(paper, now, sheet).paint();
    FlowPainter flows = new FlowPainter(paper, now, sheet);
    flows.paintWetFloors();
    new TankPainter(paper, now, sheet).paint();
    new PipePainter(paper, now, sheet).paint();
    flows.paint();
    return sheet.shapes();
  }

  public List<Shape> labels() {
    return labels;
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
