package dryfloor.app.view.edit;

import dryfloor.app.drawing.Handle;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets heights in a drawing, in metres of elevation. What comes out need not make sense: that is
 * for the checks of the drawing to say.
 */
public final class Heights {

  /** A vessel has at least this height (m). */
  private static final double LOWEST_RIM = 0.001;

  private Heights() {}

  /** The drawing with what a handle sets at another elevation (m). */
  public static Installation set(Installation drawing, Handle handle, double elevation) {
    return switch (handle.kind()) {
      case LEVEL -> level(drawing, handle.id(), elevation);
      case RIM -> rim(drawing, handle.id(), elevation);
      case WEIR -> weir(drawing, handle.id(), elevation);
      case SIPHON_BREAK -> siphonBreak(drawing, handle.id(), elevation);
      case LIP, PORT, FREE_END -> end(drawing, handle.id(), handle.number(), elevation);
      case WAYPOINT -> waypoint(drawing, handle.id(), handle.number(), elevation);
    };
  }

  /** Water of a vessel in normal operation. */
  public static Installation level(Installation drawing, String vessel, double elevation) {
    return Redrawn.vessel(drawing, vessel, old -> old.withLevel(elevation));
  }

  /** Rim of a vessel; its bottom stays, and at least a millimetre of height. */
  public static Installation rim(Installation drawing, String vessel, double elevation) {
    return Redrawn.vessel(
        drawing,
        vessel,
        old -> old.withShape(asHigh(old.shape(), Math.max(elevation - old.bottom(), LOWEST_RIM))));
  }

  private static Shape asHigh(Shape shape, double height) {
    return switch (shape) {
      case Shape.Box box -> new Shape.Box(box.length(), box.width(), height);
      case Shape.Cylinder cylinder -> new Shape.Cylinder(cylinder.diameter(), height);
      case Shape.Frustum frustum ->
          new Shape.Frustum(frustum.bottomDiameter(), frustum.rimDiameter(), height);
      case Shape.Prism prism -> new Shape.Prism(prism.planArea(), prism.rimLength(), height);
      case Shape.Measured measured -> cutAt(measured, height);
    };
  }

  /** Points below the new rim stay; up to it the walls go on as they did below. */
  private static Shape cutAt(Shape.Measured measured, double height) {
    List<Shape.Measured.Point> points = new ArrayList<>();
    measured.points().stream()
        .limit(measured.points().size() - 1)
        .filter(point -> point.depth() < height)
        .forEach(points::add);
    points.add(new Shape.Measured.Point(height, measured.volumeBelow(height)));
    return new Shape.Measured(points, measured.rimLength());
  }

  /** Edge between two vessels. */
  public static Installation weir(Installation drawing, String weir, double elevation) {
    return Redrawn.weir(drawing, weir, old -> old.withCrest(elevation));
  }

  /** Holes of a siphon break; it moves along its run to where that passes the new height. */
  public static Installation siphonBreak(Installation drawing, String part, double elevation) {
    return Redrawn.runOf(
        drawing,
        part,
        run -> RunCourse.of(drawing, run).withParts(raised(run.parts(), part, elevation)));
  }

  private static List<Part> raised(List<Part> parts, String id, double elevation) {
    return parts.stream()
        .map(
            part ->
                part instanceof Part.SiphonBreak old && old.id().equals(id)
                    ? old.withElevation(elevation)
                    : part)
        .toList();
  }

  /**
   * An opening at the end of a run: port, standpipe lip or free end.
   *
   * @param number 0 for the first end, 1 for the second
   */
  public static Installation end(Installation drawing, String run, int number, double elevation) {
    return Redrawn.run(
        drawing,
        run,
        old ->
            RunCourse.of(drawing, old)
                .changedTo(
                    drawing,
                    old.withEnds(
                        number == 0 ? at(old.from(), elevation) : old.from(),
                        number == 0 ? old.to() : at(old.to(), elevation))));
  }

  private static RunEnd at(RunEnd end, double elevation) {
    return switch (end) {
      case RunEnd.Opening opening -> new RunEnd.Opening(opening.at(), elevation, opening.kind());
      case RunEnd.AtJunction junction -> junction;
      case RunEnd.AtSupply supply -> supply;
      case RunEnd.AtDrain drain -> drain;
    };
  }

  /** Crest or low point of a run, by its place in the list. */
  public static Installation waypoint(
      Installation drawing, String run, int number, double elevation) {
    return Redrawn.run(
        drawing,
        run,
        old -> {
          List<Run.Waypoint> waypoints = new ArrayList<>(old.waypoints());
          waypoints.set(number, new Run.Waypoint(elevation, waypoints.get(number).along()));
          return RunCourse.of(drawing, old).changedTo(drawing, old.withWaypoints(waypoints));
        });
  }
}
