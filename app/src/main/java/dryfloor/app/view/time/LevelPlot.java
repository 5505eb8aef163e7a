package dryfloor.app.view.time;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.LevelCurve;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.TimeScale;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import org.jspecify.annotations.Nullable;

/** The curves themselves. */
final class LevelPlot extends Region {

  private static final double HEIGHT = 150;
  private static final double MARGIN = 10;

  /** A range of levels (m) that is worth its room. */
  private static final double LEAST_RANGE = 0.01;

  /** Dashes of one curve after another (points). */
  private static final List<List<Double>> DASHES =
      List.of(
          List.of(),
          List.of(8.0, 5.0),
          List.of(2.0, 4.0),
          List.of(12.0, 4.0, 2.0, 4.0),
          List.of(16.0, 6.0));

  private final Line now = new Line();
  private final Label sample = Track.letters("0");
  private final List<Label> marks = new ArrayList<>();
  private final List<Double> markLevels = new ArrayList<>();
  private @Nullable MovingScene film;
  private List<Outcome.VesselOutcome> vessels = List.of();
  private boolean belowRim;
  private TimeScale scale = new TimeScale(1);
  private double lowest;
  private double highest = 1;
  private double moment = Double.POSITIVE_INFINITY;

  LevelPlot() {
    setId("level-plot");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setFocusTraversable(true);
    getStyleClass().add("time-track");
    setPrefHeight(HEIGHT);
    setMinHeight(HEIGHT);
    now.getStyleClass().add("chart-now");
    sample.setVisible(false);
    sample.fontProperty().addListener((property, before, after) -> build());
    widthProperty().addListener((width, before, after) -> build());
  }

  /** Gives the curve of this number its look. */
  static void dress(Shape shape, int number) {
    shape.getStyleClass().addAll("chart-line", "chart-line-" + number % 3);
    shape.getStrokeDashArray().setAll(DASHES.get(number % DASHES.size()));
  }

  void show(MovingScene shown, List<Outcome.VesselOutcome> chosen, boolean below) {
    film = shown;
    vessels = List.copyOf(chosen);
    belowRim = below;
    scale = TimeLine.scale(shown);
    build();
  }

  void show(double newMoment) {
    moment = newMoment;
    placeNow();
  }

  private void build() {
    getChildren().setAll(sample);
    MovingScene shown = film;
    if (shown == null || getWidth() <= 2 * inset()) {
      return;
    }
    List<List<LevelCurve.Spot>> curves =
        vessels.stream().map(vessel -> curve(shown, vessel)).toList();
    lowest = extreme(curves, -1);
    highest = Math.max(extreme(curves, 1), lowest + LEAST_RANGE);
    axis(shown);
    for (int i = 0; i < curves.size(); i++) {
      Polyline line = new Polyline();
      curves.get(i).forEach(spot -> line.getPoints().addAll(x(spot.share()), y(spot.level())));
      dress(line, i);
      getChildren().add(line);
    }
    getChildren().add(now);
    placeNow();
  }

  /** Heights in the vessel (m), above its bottom or, downwards, below its rim. */
  private List<LevelCurve.Spot> curve(MovingScene shown, Outcome.VesselOutcome vessel) {
    double zero = belowRim ? vessel.rim() : vessel.bottom();
    return LevelCurve.of(
            shown.outcome().trajectory(), vessel.id(), scale, (int) (getWidth() - 2 * inset()))
        .stream()
        .map(spot -> new LevelCurve.Spot(spot.share(), spot.level() - zero))
        .toList();
  }

  private static double extreme(List<List<LevelCurve.Spot>> curves, int side) {
    return side
        * curves.stream()
            .flatMap(List::stream)
            .mapToDouble(spot -> side * spot.level())
            .max()
            .orElse(0);
  }

  private void axis(MovingScene shown) {
    marks.clear();
    markLevels.clear();
    for (double level : List.of(lowest, (lowest + highest) / 2, highest)) {
      Line line = new Line(inset(), y(level), getWidth() - inset(), y(level));
      line.getStyleClass().add("chart-grid");
      Label mark = Track.letters(shown.wording().amounts().level(Math.abs(level)));
      marks.add(mark);
      markLevels.add(level);
      getChildren().addAll(line, mark);
    }
  }

  private double inset() {
    return Track.inset(sample);
  }

  private double x(double share) {
    return inset() + share * (getWidth() - 2 * inset());
  }

  private double y(double level) {
    double share = (level - lowest) / (highest - lowest);
    return HEIGHT - MARGIN - share * (HEIGHT - 2 * MARGIN);
  }

  private void placeNow() {
    double x = x(scale.share(moment));
    now.setStartX(x);
    now.setEndX(x);
    now.setStartY(MARGIN / 2);
    now.setEndY(HEIGHT);
  }

  @Override
  protected void layoutChildren() {
    for (int i = 0; i < marks.size(); i++) {
      Label mark = marks.get(i);
      mark.autosize();
      mark.relocate(
          Math.max(0, inset() - mark.getWidth() - 4), y(markLevels.get(i)) - mark.getHeight() / 2);
    }
  }
}
