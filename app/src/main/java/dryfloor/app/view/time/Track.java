package dryfloor.app.view.time;

import dryfloor.app.report.TimeScale;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import org.jspecify.annotations.Nullable;

/** The line of time itself: ticks, a mark for each event, and the moment, which can be dragged. */
final class Track extends Region {

  /** Room at both ends for letters (widths of a letter). */
  private static final double INSET = 4.6;

  /** Ticks keep so far apart, in letters' heights. */
  private static final double CLEARANCE = 5;

  /** Height of a line against that of its letters. */
  private static final double LINE_HEIGHT = 1.4;

  private static final double LINE = 26;
  private static final double EVENT = 9;
  private static final double HANDLE = 8;

  private final DoubleConsumer goTo;
  private final Playback playback;
  private final Line line = new Line();
  private final Line past = new Line();
  private final Polygon handle =
      new Polygon(
          -HANDLE,
          -HANDLE,
          HANDLE,
          -HANDLE,
          HANDLE,
          HANDLE / 2,
          0,
          HANDLE * 1.6,
          -HANDLE,
          HANDLE / 2);

  private TimeScale scale = new TimeScale(1);
  private List<Double> events = List.of();
  private double moment = Double.POSITIVE_INFINITY;
  private final Label sample = letters("0");

  /** Ticks and events; the sample of the letters stays when they change. */
  private final Group marks = new Group();

  private final Map<Label, Double> ticks = new LinkedHashMap<>();

  Track(Playback playback) {
    this.playback = playback;
    this.goTo = playback::goTo;
    setId("time-track");
    getStyleClass().add("time-track");
    line.getStyleClass().add("time-axis");
    past.getStyleClass().add("time-past");
    handle.getStyleClass().add("time-handle");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    sample.setVisible(false);
    getChildren().setAll(sample, line, past, marks, handle);
    sample.fontProperty().addListener((property, before, now) -> build());
    widthProperty().addListener((property, before, now) -> build());
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::drag);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  void show(TimeScale newScale, List<Double> newEvents) {
    scale = newScale;
    events = List.copyOf(newEvents);
    build();
  }

  void show(double newMoment) {
    moment = newMoment;
    place();
    notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
  }

  /** Room at both ends, for letters as large as a label's (points). */
  static double inset(Label letters) {
    return INSET * letters.getFont().getSize();
  }

  private double inset() {
    return inset(sample);
  }

  private double x(double time) {
    return inset() + scale.share(time) * (getWidth() - 2 * inset());
  }

  private void drag(MouseEvent event) {
    requestFocus();
    double share = (event.getX() - inset()) / (getWidth() - 2 * inset());
    goTo.accept(share >= 1 ? Double.POSITIVE_INFINITY : scale.time(share));
    event.consume();
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> playback.previous();
      case RIGHT -> playback.next();
      case SPACE -> playback.playOrPause();
      case HOME -> playback.goTo(0);
      case END -> playback.goTo(Double.POSITIVE_INFINITY);
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  protected double computePrefHeight(double width) {
    return LINE + 8 + lettersHeight() + 4;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  /** Ticks and marks anew, after the width or the scale has changed. */
  private void build() {
    double clearance = CLEARANCE * lettersHeight() / Math.max(1, getWidth() - 2 * inset());
    ticks.clear();
    scale
        .ticks(Math.min(clearance, 1))
        .forEach(tick -> ticks.put(letters(tick.label()), tick.time()));
    marks.getChildren().setAll(ticks.keySet());
    ticks.values().forEach(time -> mark(time, LINE, LINE + 6, "time-axis"));
    events.stream().distinct().forEach(time -> mark(time, LINE - EVENT, LINE, "time-event"));
    place();
  }

  private double lettersHeight() {
    return sample.getFont().getSize() * LINE_HEIGHT;
  }

  /** A label in the letters of the line of time. */
  static Label letters(String text) {
    Label letters = new Label(text);
    letters.getStyleClass().add("time-letters");
    return letters;
  }

  private void mark(double time, double from, double to, String style) {
    Line mark = new Line(x(time), from, x(time), to);
    mark.getStyleClass().add(style);
    marks.getChildren().add(mark);
  }

  @Override
  protected void layoutChildren() {
    line.setStartX(inset());
    line.setEndX(getWidth() - inset());
    line.setStartY(LINE);
    line.setEndY(LINE);
    ticks.forEach(
        (label, time) -> {
          label.autosize();
          label.relocate(x(time) - label.getWidth() / 2, LINE + 8);
        });
    place();
  }

  private void place() {
    double x = x(moment);
    handle.setLayoutX(x);
    handle.setLayoutY(LINE - HANDLE * 1.6);
    past.setStartX(inset());
    past.setEndX(x);
    past.setStartY(LINE);
    past.setEndY(LINE);
  }

  @Override
  public @Nullable Object queryAccessibleAttribute(
      AccessibleAttribute attribute, Object... parameters) {
    return switch (attribute) {
      case VALUE -> scale.share(moment) * 100;
      case MIN_VALUE -> 0.0;
      case MAX_VALUE -> 100.0;
      case ORIENTATION -> Orientation.HORIZONTAL;
      default -> super.queryAccessibleAttribute(attribute, parameters);
    };
  }

  @Override
  public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
    switch (action) {
      case INCREMENT, BLOCK_INCREMENT -> playback.next();
      case DECREMENT, BLOCK_DECREMENT -> playback.previous();
      default -> super.executeAccessibleAction(action, parameters);
    }
  }
}
