package dryfloor.app.view.picture;

import dryfloor.app.drawing.Point;
import dryfloor.app.drawing.Shape;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Paints shapes of the drawing with the colours of a palette. */
final class ShapePainter {

  /** A rim of paper round letters, so that they can be read over lines (points). */
  private static final double HALO = 3;

  private final GraphicsContext surface;
  private final Palette palette;

  ShapePainter(GraphicsContext surface, Palette palette) {
    this.surface = surface;
    this.palette = palette;
    surface.setLineJoin(StrokeLineJoin.ROUND);
    surface.setLineCap(StrokeLineCap.BUTT);
    surface.setTextBaseline(VPos.BASELINE);
  }

  void paint(Shape shape) {
    Palette.Look look = palette.look(shape.style());
    switch (shape) {
      case Shape.Line line -> line(line, look);
      case Shape.Stream stream -> stream(stream);
      case Shape.Circle circle -> circle(circle, look);
      case Shape.Text text -> text(text, look);
    }
  }

  private void line(Shape.Line line, Palette.Look look) {
    int count = line.points().size();
    double[] x = line.points().stream().mapToDouble(Point::x).toArray();
    double[] y = line.points().stream().mapToDouble(Point::y).toArray();
    stroke(look);
    if (line.closed()) {
      surface.setFill(look.fill());
      surface.fillPolygon(x, y, count);
      if (look.width() > 0) {
        surface.strokePolygon(x, y, count);
      }
    } else {
      surface.strokePolyline(x, y, count);
    }
  }

  private void stream(Shape.Stream stream) {
    stroke(palette.marks());
    surface.setLineDashOffset(-stream.travelled());
    surface.strokePolyline(
        stream.points().stream().mapToDouble(Point::x).toArray(),
        stream.points().stream().mapToDouble(Point::y).toArray(),
        stream.points().size());
    surface.setLineDashOffset(0);
  }

  private void circle(Shape.Circle circle, Palette.Look look) {
    double left = circle.middle().x() - circle.radius();
    double top = circle.middle().y() - circle.radius();
    double size = 2 * circle.radius();
    surface.setFill(look.fill());
    surface.fillOval(left, top, size, size);
    if (look.width() > 0) {
      stroke(look);
      surface.strokeOval(left, top, size, size);
    }
  }

  private void text(Shape.Text text, Palette.Look look) {
    surface.setFont(Font.font("System", look.weight(), text.size()));
    surface.setTextAlign(
        switch (text.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    surface.setStroke(palette.paper());
    surface.setLineWidth(HALO);
    surface.setLineDashes();
    surface.strokeText(text.text(), text.at().x(), text.at().y());
    surface.setFill(look.fill());
    surface.fillText(text.text(), text.at().x(), text.at().y());
  }

  private void stroke(Palette.Look look) {
    surface.setStroke(look.width() > 0 ? look.stroke() : Color.TRANSPARENT);
    surface.setLineWidth(look.width());
    surface.setLineDashes(look.dashes().stream().mapToDouble(Double::doubleValue).toArray());
  }
}
