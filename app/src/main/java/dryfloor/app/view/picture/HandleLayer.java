package dryfloor.app.view.picture;

import dryfloor.app.drawing.Point;
import dryfloor.app.view.picture.HandlePicker.OnScreen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** Marks of handles over the picture and the value in the hand; the mouse goes through it. */
final class HandleLayer extends Pane {

  private static final double RADIUS = 5;
  private static final double RING = 14;
  private static final double AWAY = 16;

  private final Pane marks = new Pane();
  private final Label value = new Label();
  private final Rectangle clip = new Rectangle();

  HandleLayer() {
    setMouseTransparent(true);
    value.setId("handle-value");
    value.getStyleClass().add("handle-value");
    value.setVisible(false);
    marks.setManaged(false);
    value.setManaged(false);
    getChildren().addAll(marks, value);
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
  }

  /** Marks these handles, one of them as the one that is meant. */
  void mark(List<OnScreen> handles, Optional<OnScreen> meant) {
    List<Node> nodes = new ArrayList<>();
    handles.forEach(handle -> nodes.add(mark(handle, "handle")));
    meant.ifPresent(handle -> nodes.add(mark(handle, "handle-meant")));
    marks.getChildren().setAll(nodes);
  }

  /** Rings what is chosen and has no handle. */
  void ring(Optional<Point> middle) {
    middle.ifPresent(
        at -> {
          Circle ring = new Circle(at.x(), at.y(), RING);
          ring.getStyleClass().add("handle-ring");
          marks.getChildren().add(ring);
        });
  }

  /** A line from where a run is to begin to where the hand is; gone with the next marks. */
  void line(double fromX, double fromY, double toX, double toY) {
    Line line = new Line(fromX, fromY, toX, toY);
    line.getStyleClass().add("handle-line");
    marks.getChildren().setAll(line);
  }

  private static Node mark(OnScreen handle, String style) {
    Node mark =
        handle.handle().isLine()
            ? new Line(handle.left(), handle.y(), handle.right(), handle.y())
            : new Circle(handle.left(), handle.y(), RADIUS);
    mark.getStyleClass().add(style);
    return mark;
  }

  /** Says a value beside a point of the screen. */
  void say(String text, double x, double y) {
    value.setText(text);
    value.setVisible(true);
    value.autosize();
    value.relocate(
        Math.clamp(x + AWAY, 0, Math.max(0, getWidth() - value.getWidth())),
        Math.clamp(y - AWAY - value.getHeight(), 0, Math.max(0, getHeight() - value.getHeight())));
  }

  void sayNothing() {
    value.setVisible(false);
  }
}
