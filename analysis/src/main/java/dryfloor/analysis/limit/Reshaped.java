package dryfloor.analysis.limit;

import dryfloor.model.shape.Shape;
import dryfloor.model.shape.Shape.Measured.Point;
import java.util.List;
import java.util.stream.Stream;

/** The inside of a vessel made taller, lower, wider or narrower. */
final class Reshaped {

  private Reshaped() {}

  /** The same walls carried on or cut off at this height (m). */
  static Shape tall(Shape shape, double height) {
    return switch (shape) {
      case Shape.Box box -> new Shape.Box(box.length(), box.width(), height);
      case Shape.Cylinder round -> new Shape.Cylinder(round.diameter(), height);
      case Shape.Frustum vat ->
          new Shape.Frustum(
              vat.bottomDiameter(),
              vat.bottomDiameter()
                  + (vat.rimDiameter() - vat.bottomDiameter()) * height / vat.height(),
              height);
      case Shape.Prism prism -> new Shape.Prism(prism.planArea(), prism.rimLength(), height);
      case Shape.Measured measured -> {
        List<Point> lower = measured.points().stream().filter(p -> p.depth() < height).toList();
        Point rim = new Point(height, measured.volumeBelow(height));
        yield new Shape.Measured(
            Stream.concat(lower.stream(), Stream.of(rim)).toList(), measured.rimLength());
      }
    };
  }

  /** This many times the plan area at each height. */
  static Shape wide(Shape shape, double times) {
    double side = Math.sqrt(times);
    return switch (shape) {
      case Shape.Box box -> new Shape.Box(box.length() * side, box.width() * side, box.height());
      case Shape.Cylinder round -> new Shape.Cylinder(round.diameter() * side, round.height());
      case Shape.Frustum vat ->
          new Shape.Frustum(vat.bottomDiameter() * side, vat.rimDiameter() * side, vat.height());
      case Shape.Prism prism ->
          new Shape.Prism(prism.planArea() * times, prism.rimLength() * side, prism.height());
      case Shape.Measured measured ->
          new Shape.Measured(
              measured.points().stream()
                  .map(p -> new Point(p.depth(), p.volume() * times))
                  .toList(),
              measured.rimLength() * side);
    };
  }
}
