package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Vessels with their water before and after. */
final class TankPainter {

  /** Levels nearer than this (points) look the same. */
  private static final double SAME = 0.4;

  private static final double OVERHANG = 5;

  /** Less than this (m) is no change of level. */
  private static final double STAYS = 1e-3;

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;

  TankPainter(Paper paper, Scene scene, Sheet sheet) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
  }

  void paint() {
    paper.plan().tanks().values().forEach(this::tank);
  }

  void label() {
    // Where there is little room, those first that a failure does something to.
    paper.plan().tanks().values().stream()
        .filter(tank -> scene.waters().containsKey(tank.id()))
        .sorted(Comparator.comparing(tank -> sheet.isBrief() && stays(tank)))
        .forEach(this::name);
  }

  private void tank(Tank tank) {
    stand(tank);
    sheet.add(band(tank, tank.bottom(), tank.rim(), Style.TANK_INSIDE));
    Optional.ofNullable(scene.waters().get(tank.id())).ifPresent(water -> water(tank, water));
    walls(tank);
    sheet.avoid(
        Area.around(paper.at(tank.left(), tank.rim()), paper.at(tank.right(), tank.bottom()), 0));
  }

  private void stand(Tank tank) {
    if (paper.scale() * (tank.bottom() - tank.support()) > 1) {
      sheet.add(
          Shape.box(
              paper.x(tank.left()),
              paper.y(tank.bottom()),
              paper.x(tank.right()),
              paper.y(tank.support()),
              Style.STAND));
    }
  }

  private void water(Tank tank, Scene.Water water) {
    double before = Math.clamp(water.before(), tank.bottom(), tank.rim());
    double after = Math.clamp(water.after(), tank.bottom(), tank.rim());
    double low = Math.min(before, after);
    double high = Math.max(before, after);
    if (low > tank.bottom()) {
      sheet.add(band(tank, tank.bottom(), low, Style.WATER));
    }
    boolean changed = paper.scale() * (high - low) > SAME;
    if (changed) {
      sheet.add(band(tank, low, high, after > before ? Style.WATER_GAINED : Style.WATER_GONE));
      if (before > tank.bottom()) {
        level(tank, before, 0, Style.LEVEL_BEFORE);
      }
    }
    if (after > tank.bottom()) {
      level(tank, after, OVERHANG, Style.LEVEL_AFTER);
    }
  }

  private void level(Tank tank, double elevation, double overhang, Style style) {
    sheet.add(
        Shape.line(
            paper.at(tank.leftAt(elevation), elevation).moved(-overhang, 0),
            paper.at(tank.rightAt(elevation), elevation).moved(overhang, 0),
            style));
  }

  private Shape band(Tank tank, double low, double high, Style style) {
    return new Shape.Line(
        List.of(
            paper.at(tank.leftAt(low), low),
            paper.at(tank.leftAt(high), high),
            paper.at(tank.rightAt(high), high),
            paper.at(tank.rightAt(low), low)),
        true,
        style);
  }

  private void walls(Tank tank) {
    boolean basin =
        paper.plan().installation().vessels().stream()
            .anyMatch(vessel -> vessel.id().equals(tank.id()) && vessel.isBasin());
    sheet.addKeptClear(
        new Shape.Line(
            List.of(
                paper.at(tank.leftAt(tank.leftTop()), tank.leftTop()),
                paper.at(tank.leftAt(tank.bottom()), tank.bottom()),
                paper.at(tank.rightAt(tank.bottom()), tank.bottom()),
                paper.at(tank.rightAt(tank.rightTop()), tank.rightTop())),
            false,
            basin ? Style.BASIN_WALL : Style.WALL));
  }

  private void name(Tank tank) {
    Scene.Water water = Optional.ofNullable(scene.waters().get(tank.id())).orElseThrow();
    List<Sheet.LabelLine> lines = new ArrayList<>();
    lines.add(new Sheet.LabelLine(water.name(), 13, Style.NAME));
    boolean nameAlone = sheet.isBrief() && stays(tank);
    for (String line : water.note().split("\n", -1)) {
      if (!line.isEmpty() && !nameAlone) {
        lines.add(new Sheet.LabelLine(line, 11, Style.NOTE));
      }
    }
    double height = lines.stream().mapToDouble(line -> line.size() * 1.2).sum();
    sheet.label(new Label(anchor(tank), lines, wishes(tank, height), stays(tank)));
  }

  /** Whether its water stands as it did, as far as the eye can see. */
  private boolean stays(Tank tank) {
    return Optional.ofNullable(scene.waters().get(tank.id()))
        .map(water -> Math.abs(water.after() - water.before()) < STAYS)
        .orElse(true);
  }

  private Point anchor(Tank tank) {
    return holdsOthers(tank)
        ? paper.at(tank.right(), (tank.rim() + tank.bottom()) / 2)
        : paper.at(tank.middle(), tank.rim());
  }

  private List<Label.Wish> wishes(Tank tank, double height) {
    Point left = paper.at(tank.left(), tank.rim());
    Point right = paper.at(tank.right(), tank.rim());
    Point middle = left.towards(right, 0.5);
    double raised = -height - 8;
    double high = -height - 34;
    double inside = Math.min(paper.y(tank.bottom()) - height - 4, middle.y() + 26);
    List<Label.Wish> beside =
        List.of(
            new Label.Wish(right.moved(12, raised + 16), Anchor.START),
            new Label.Wish(left.moved(-12, raised + 16), Anchor.END),
            new Label.Wish(right.moved(12, 2), Anchor.START),
            new Label.Wish(left.moved(-12, 2), Anchor.END));
    if (holdsOthers(tank)) {
      return beside;
    }
    List<Label.Wish> above =
        List.of(
            new Label.Wish(middle.moved(0, raised), Anchor.MIDDLE),
            new Label.Wish(left.moved(0, raised), Anchor.START),
            new Label.Wish(right.moved(0, raised), Anchor.END),
            new Label.Wish(middle.moved(0, high), Anchor.MIDDLE),
            new Label.Wish(left.moved(0, high), Anchor.START),
            new Label.Wish(right.moved(0, high), Anchor.END),
            new Label.Wish(new Point(middle.x(), inside), Anchor.MIDDLE));
    return Stream.concat(above.stream(), beside.stream()).toList();
  }

  private boolean holdsOthers(Tank tank) {
    return paper.plan().installation().vessels().stream()
        .anyMatch(vessel -> vessel.standsIn().equals(tank.id()));
  }
}
