package dryfloor.analysis.generated;

import dryfloor.model.shape.Shape;
import java.util.List;

/** Every kind of shape, by plan area and height. */
public enum Outline {
  BOX,
  CYLINDER,
  FRUSTUM,
  PRISM,
  MEASURED;

  /**
   * A shape of about this plan area.
   *
   * @param area m²
   * @param height m
   */
  Shape of(double area, double height) {
    double diameter = Math.sqrt(4 * area / Math.PI);
    return switch (this) {
      case BOX -> new Shape.Box(Math.sqrt(1.5 * area), Math.sqrt(area / 1.5), height);
      case CYLINDER -> new Shape.Cylinder(diameter, height);
      case FRUSTUM -> new Shape.Frustum(0.8 * diameter, 1.1 * diameter, height);
      case PRISM -> new Shape.Prism(area, 5 * Math.sqrt(area), height);
      case MEASURED ->
          new Shape.Measured(
              List.of(
                  new Shape.Measured.Point(0, 0),
                  new Shape.Measured.Point(height / 3, 0.8 * area * height / 3),
                  new Shape.Measured.Point(height, area * height)),
              4.4 * Math.sqrt(area));
    };
  }
}
