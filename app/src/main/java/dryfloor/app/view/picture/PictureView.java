package dryfloor.app.view.picture;

import dryfloor.app.drawing.Shape;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.transform.Affine;

/** The picture on the screen: it can be brought closer, moved, and shown whole. */
public final class PictureView extends Region {

  private static final double CLOSEST = 8;
  private static final double FARTHEST = 0.1;
  private static final double ONE_STEP = 1.15;

  private final Canvas canvas = new Canvas();
  private Palette palette = Palette.LIGHT;
  private List<Shape> shapes = List.of();
  private double paperWidth = 1;
  private double paperHeight = 1;

  /** Points on the screen for each point of the paper, and where the paper's corner lies. */
  private double zoom = 1;

  private double left;
  private double top;
  private boolean whole = true;
  private final ReadOnlyIntegerWrapper paintings = new ReadOnlyIntegerWrapper();
  private double grabbedX;
  private double grabbedY;

  /** An empty picture. */
  public PictureView() {
    getChildren().add(canvas);
    setFocusTraversable(true);
    setId("picture");
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::grab);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::move);
    addEventHandler(ScrollEvent.SCROLL, this::scroll);
  }

  /** Shows these shapes on paper of this size (points). */
  public void show(List<Shape> all, double width, double height) {
    shapes = List.copyOf(all);
    paperWidth = width;
    paperHeight = height;
    if (whole) {
      fit();
    }
    paint();
  }

  /** Dark letters on light paper, or the other way round. */
  public void setDark(boolean dark) {
    palette = dark ? Palette.DARK : Palette.LIGHT;
    paint();
  }

  /** Shows all of the paper, now and whenever the window changes its size. */
  public void showAll() {
    whole = true;
    fit();
    paint();
  }

  /** Brings the middle of the picture closer. */
  public void closer() {
    zoomBy(ONE_STEP, getWidth() / 2, getHeight() / 2);
  }

  /** Moves the middle of the picture away. */
  public void farther() {
    zoomBy(1 / ONE_STEP, getWidth() / 2, getHeight() / 2);
  }

  /** What is shown, in the order of painting. */
  public List<Shape> shown() {
    return shapes;
  }

  /** How often it was painted: changes whenever anything lies elsewhere on the screen. */
  public ReadOnlyIntegerProperty paintings() {
    return paintings.getReadOnlyProperty();
  }

  /** Where a point of the screen lies across the paper (points). */
  public double paperX(double x) {
    return (x - left) / zoom;
  }

  /** Where a point of the screen lies down the paper (points). */
  public double paperY(double y) {
    return (y - top) / zoom;
  }

  /** Where a point across the paper lies on the screen. */
  public double screenX(double x) {
    return left + zoom * x;
  }

  /** Where a point down the paper lies on the screen. */
  public double screenY(double y) {
    return top + zoom * y;
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    if (whole) {
      fit();
    }
    paint();
  }

  private void fit() {
    zoom =
        Math.clamp(Math.min(getWidth() / paperWidth, getHeight() / paperHeight), FARTHEST, CLOSEST);
    left = (getWidth() - zoom * paperWidth) / 2;
    top = (getHeight() - zoom * paperHeight) / 2;
  }

  private void zoomBy(double factor, double x, double y) {
    double next = Math.clamp(zoom * factor, FARTHEST, CLOSEST);
    left = x - (x - left) * next / zoom;
    top = y - (y - top) * next / zoom;
    zoom = next;
    whole = false;
    paint();
  }

  private void grab(MouseEvent event) {
    requestFocus();
    grabbedX = event.getX() - left;
    grabbedY = event.getY() - top;
  }

  private void move(MouseEvent event) {
    if (event.isConsumed()) {
      return;
    }
    left = event.getX() - grabbedX;
    top = event.getY() - grabbedY;
    whole = false;
    paint();
  }

  private void scroll(ScrollEvent event) {
    if (event.getDeltaY() != 0) {
      zoomBy(event.getDeltaY() > 0 ? ONE_STEP : 1 / ONE_STEP, event.getX(), event.getY());
    }
  }

  private void paint() {
    GraphicsContext surface = canvas.getGraphicsContext2D();
    surface.setTransform(new Affine());
    surface.setFill(palette.paper());
    surface.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
    surface.translate(left, top);
    surface.scale(zoom, zoom);
    ShapePainter painter = new ShapePainter(surface, palette);
    shapes.forEach(painter::paint);
    paintings.set(paintings.get() + 1);
  }
}
