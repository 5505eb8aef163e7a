package dryfloor.app.paper;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** What is filled on a page of a PDF, from top to bottom; what is painted twice counts once. */
final class Boxes extends PDFGraphicsStreamEngine {

  private final double height;
  private final List<MarkStripPagesTest.Box> boxes = new ArrayList<>();
  private Path2D.Double path = new Path2D.Double();

  private Boxes(PDPage page) {
    super(page);
    this.height = page.getMediaBox().getHeight();
  }

  static List<MarkStripPagesTest.Box> on(PDPage page) throws IOException {
    Boxes reader = new Boxes(page);
    reader.processPage(page);
    reader.boxes.sort(Comparator.comparingDouble(MarkStripPagesTest.Box::top));
    return reader.boxes.stream().distinct().toList();
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void clip(int rule) {}

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint() == null ? new Point2D.Double() : path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path = new Path2D.Double();
  }

  @Override
  public void strokePath() {
    endPath();
  }

  @Override
  public void fillPath(int rule) {
    Rectangle2D box = path.getBounds2D();
    boxes.add(
        MarkStripPagesTest.Box.ofPoints(
            box.getX(), height - box.getMaxY(), box.getWidth(), box.getHeight()));
    endPath();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    fillPath(rule);
  }

  @Override
  public void shadingFill(COSName shading) {}
}
