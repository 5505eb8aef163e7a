package dryfloor.app.paper;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.Point;
import dryfloor.app.drawing.Shape;
import dryfloor.app.drawing.Shape.Text.Anchor;
import dryfloor.app.drawing.Style;
import dryfloor.app.report.LevelCurve;
import dryfloor.app.report.TimeScale;
import dryfloor.app.report.Wording;
import java.util.ArrayList;
import java.util.List;

/** The level of one vessel over time, above its inside bottom, with its rim where it comes near. */
final class LevelPlot {

  private static final double WIDTH = 320;
  private static final double HEIGHT = 180;
  private static final double LEFT = 60;
  private static final double RIGHT = 14;
  private static final double TOP = 30;
  private static final double BOTTOM = 26;
  private static final double LETTERS = 11;

  /** The curve is cut into so many slots. */
  private static final int SLOTS = 240;

  /** Marks of time are no nearer than this share of the width. */
  private static final double CLEAR = 0.19;

  /** A range of levels (m) that is worth its room. */
  private static final double LEAST_RANGE = 0.01;

  /** The rim is drawn where the water comes within this share of the range. */
  private static final double NEAR = 1.0;

  private final Wording wording;
  private final Outcome.VesselOutcome vessel;
  private final TimeScale scale;
  private final List<LevelCurve.Spot> curve;
  private final double lowest;
  private final double highest;
  private final List<Shape> shapes = new ArrayList<>();

  private LevelPlot(Wording wording, Outcome outcome, Outcome.VesselOutcome vessel) {
    this.wording = wording;
    this.vessel = vessel;
    Trajectory trajectory = outcome.trajectory();
    this.scale = new TimeScale(Math.max(1, trajectory.time(trajectory.moments() - 1)));
    this.curve = LevelCurve.of(trajectory, vessel.id(), scale, SLOTS);
    double low = curve.stream().mapToDouble(LevelCurve.Spot::level).min().orElse(vessel.bottom());
    double high = curve.stream().mapToDouble(LevelCurve.Spot::level).max().orElse(low);
    double range = Math.max(high - low, LEAST_RANGE);
    this.lowest = low;
    this.highest = vessel.rim() - high < NEAR * range ? Math.max(vessel.rim(), high) : low + range;
  }

  /** How far a level comes from where it was (m). */
  static double swing(Outcome outcome, Outcome.VesselOutcome vessel) {
    Trajectory trajectory = outcome.trajectory();
    if (!trajectory.places().contains(vessel.id())) {
      return 0;
    }
    double farthest = 0;
    for (int moment = 0; moment < trajectory.moments(); moment++) {
      double away = Math.abs(trajectory.level(moment, vessel.id()) - vessel.levelBefore());
      farthest = Math.max(farthest, away);
    }
    return farthest;
  }

  static Elevation of(Wording wording, Outcome outcome, Outcome.VesselOutcome vessel) {
    LevelPlot plot = new LevelPlot(wording, outcome, vessel);
    plot.axes();
    plot.rim();
    plot.shapes.add(
        new Shape.Line(
            plot.curve.stream()
                .map(spot -> new Point(plot.x(spot.share()), plot.y(spot.level())))
                .toList(),
            false,
            Style.LEVEL_AFTER));
    return new Elevation(WIDTH, HEIGHT, plot.title(), plot.shapes);
  }

  private String title() {
    return "Level over time: " + wording.names().label(vessel.id());
  }

  private void axes() {
    text(new Point(LEFT, TOP - 14), wording.names().label(vessel.id()), Anchor.START, Style.NAME);
    for (double level : List.of(lowest, (lowest + highest) / 2, highest)) {
      shapes.add(
          Shape.line(new Point(LEFT, y(level)), new Point(WIDTH - RIGHT, y(level)), Style.LEADER));
      String height = wording.amounts().level(level - vessel.bottom());
      text(new Point(LEFT - 6, y(level) + 4), height, Anchor.END, Style.SMALL);
    }
    for (TimeScale.Tick tick : scale.ticks(CLEAR)) {
      double x = x(scale.share(tick.time()));
      shapes.add(
          Shape.line(new Point(x, HEIGHT - BOTTOM), new Point(x, HEIGHT - BOTTOM + 4), Style.RULE));
      text(new Point(x, HEIGHT - BOTTOM + 16), tick.label(), Anchor.MIDDLE, Style.SMALL);
    }
  }

  private void rim() {
    if (highest >= vessel.rim()) {
      double y = y(vessel.rim());
      shapes.add(Shape.line(new Point(LEFT, y), new Point(WIDTH - RIGHT, y), Style.WALL));
      text(new Point(WIDTH - RIGHT, y - 5), "rim", Anchor.END, Style.SMALL);
    }
  }

  private void text(Point at, String words, Anchor anchor, Style style) {
    shapes.add(new Shape.Text(at, words, anchor, LETTERS, style));
  }

  private double x(double share) {
    return LEFT + share * (WIDTH - LEFT - RIGHT);
  }

  private double y(double level) {
    return HEIGHT - BOTTOM - (level - lowest) / (highest - lowest) * (HEIGHT - BOTTOM - TOP);
  }
}
