package dryfloor.app.drawing;

import dryfloor.model.shape.Shape;

/** How wide a vessel looks from the side (m). */
record Outline(double width, double taper) {

  static Outline of(Shape shape) {
    return switch (shape) {
      case Shape.Box box -> new Outline(box.length(), 0);
      case Shape.Cylinder cylinder -> new Outline(cylinder.diameter(), 0);
      case Shape.Frustum frustum ->
          new Outline(
              frustum.rimDiameter(), (frustum.rimDiameter() - frustum.bottomDiameter()) / 2);
      case Shape.Prism prism -> new Outline(longSide(prism.planArea(), prism.rimLength()), 0);
      case Shape.Measured measured ->
          new Outline(longSide(measured.areaAt(measured.height()), measured.rimLength()), 0);
    };
  }

  /** Of the rectangle with this area and circumference, or of the square where there is none. */
  private static double longSide(double area, double circumference) {
    double half = circumference / 2;
    double discriminant = half * half - 4 * area;
    return discriminant > 0 ? (half + Math.sqrt(discriminant)) / 2 : Math.sqrt(area);
  }
}
