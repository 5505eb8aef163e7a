package dryfloor.model.shape;

import java.util.List;

/**
 * The inside of an open-topped vessel, measured from its inside bottom upwards.
 *
 * <p>Depths are metres above the inside bottom. Above {@link #height()} the outline is continued
 * straight up with the area at the rim, because water that passes over a rim stands a little above
 * it.
 */
public sealed interface Shape {

  /** Inside height from bottom to rim (m). */
  double height();

  /** Plan area of the water surface at this depth (m²), always positive. */
  double areaAt(double depth);

  /** Volume below this depth (m³); zero at or below the bottom. */
  double volumeBelow(double depth);

  /** Length of the rim (m), over which a full vessel spills. */
  double rimLength();

  /** Volume up to the rim (m³). */
  default double capacity() {
    return volumeBelow(height());
  }

  /** A rectangular tank; all three inside lengths in metres. */
  record Box(double length, double width, double height) implements Shape {
    public Box {
      requirePositive("length", length);
      requirePositive("width", width);
      requirePositive("height", height);
    }

    @Override
    public double areaAt(double depth) {
      return length * width;
    }

    @Override
    public double volumeBelow(double depth) {
      return Math.max(0, depth) * length * width;
    }

    @Override
    public double rimLength() {
      return 2 * (length + width);
    }
  }

  /** An upright cylinder; inside diameter and height in metres. */
  record Cylinder(double diameter, double height) implements Shape {
    public Cylinder {
      requirePositive("diameter", diameter);
      requirePositive("height", height);
    }

    @Override
    public double areaAt(double depth) {
      return Math.PI / 4 * diameter * diameter;
    }

    @Override
    public double volumeBelow(double depth) {
      return Math.max(0, depth) * areaAt(depth);
    }

    @Override
    public double rimLength() {
      return Math.PI * diameter;
    }
  }

  /**
   * A round vat that widens (or narrows) evenly from bottom to rim; diameters and height in metres.
   */
  record Frustum(double bottomDiameter, double rimDiameter, double height) implements Shape {
    public Frustum {
      requirePositive("bottomDiameter", bottomDiameter);
      requirePositive("rimDiameter", rimDiameter);
      requirePositive("height", height);
    }

    @Override
    public double areaAt(double depth) {
      double diameter = diameterAt(Math.clamp(depth, 0, height));
      return Math.PI / 4 * diameter * diameter;
    }

    @Override
    public double volumeBelow(double depth) {
      double inside = Math.clamp(depth, 0, height);
      double diameter = diameterAt(inside);
      double squares =
          bottomDiameter * bottomDiameter + bottomDiameter * diameter + diameter * diameter;
      return Math.PI / 12 * inside * squares + Math.max(0, depth - height) * areaAt(height);
    }

    @Override
    public double rimLength() {
      return Math.PI * rimDiameter;
    }

    private double diameterAt(double depth) {
      return bottomDiameter + (rimDiameter - bottomDiameter) * depth / height;
    }
  }

  /**
   * Any outline with upright walls, by its plan area: L-shapes, bow fronts, trenches.
   *
   * @param planArea inside plan area (m²)
   * @param rimLength length of the rim (m), the outline's circumference
   * @param height inside height (m)
   */
  record Prism(double planArea, double rimLength, double height) implements Shape {
    public Prism {
      requirePositive("planArea", planArea);
      requirePositive("rimLength", rimLength);
      requirePositive("height", height);
    }

    @Override
    public double areaAt(double depth) {
      return planArea;
    }

    @Override
    public double volumeBelow(double depth) {
      return Math.max(0, depth) * planArea;
    }
  }

  /**
   * A vessel known by measured levels and volumes, straight between the points.
   *
   * @param points depth–volume pairs, both strictly rising, the first one at depth 0 and volume 0,
   *     the last one at the rim
   * @param rimLength length of the rim (m)
   */
  record Measured(List<Point> points, double rimLength) implements Shape {

    /** Volume (m³) that the vessel holds up to this depth (m). */
    public record Point(double depth, double volume) {}

    public Measured {
      points = List.copyOf(points);
      requirePositive("rimLength", rimLength);
      if (points.size() < 2 || points.getFirst().depth() != 0 || points.getFirst().volume() != 0) {
        throw new IllegalArgumentException(
            "a level–volume table needs two or more points and starts at depth 0 with volume 0");
      }
      for (int i = 1; i < points.size(); i++) {
        if (!(points.get(i).depth() > points.get(i - 1).depth())
            || !(points.get(i).volume() > points.get(i - 1).volume())) {
          throw new IllegalArgumentException(
              "depths and volumes of a level–volume table rise from point to point; point "
                  + (i + 1)
                  + " does not");
        }
      }
    }

    @Override
    public double height() {
      return points.getLast().depth();
    }

    @Override
    public double areaAt(double depth) {
      Point above = upperEndOfSlice(depth);
      Point below = points.get(points.indexOf(above) - 1);
      return (above.volume() - below.volume()) / (above.depth() - below.depth());
    }

    @Override
    public double volumeBelow(double depth) {
      Point above = upperEndOfSlice(depth);
      return Math.max(0, above.volume() + (depth - above.depth()) * areaAt(depth));
    }

    private Point upperEndOfSlice(double depth) {
      return points.stream()
          .skip(1)
          .filter(point -> depth < point.depth())
          .findFirst()
          .orElse(points.getLast());
    }
  }

  private static void requirePositive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " is " + value + " but must be above zero");
    }
  }
}
