package dryfloor.model.file;

import dryfloor.model.shape.Shape;
import dryfloor.model.unit.QuantityKind;
import java.util.List;

/** Turns the inside corners of a vessel, in order around it, into plan area and rim length. */
final class OutlineCorners {

  private OutlineCorners() {}

  static Shape read(Fields in, double height) {
    List<double[]> corners =
        in.pairs("corners", QuantityKind.LENGTH, QuantityKind.LENGTH, Sign.ANY);
    if (!in.sound(height)) {
      return ShapeReader.STAND_IN;
    }
    double area = 0;
    double around = 0;
    for (int i = 0; i < corners.size(); i++) {
      double[] here = corners.get(i);
      double[] next = corners.get((i + 1) % corners.size());
      area += (here[0] * next[1] - next[0] * here[1]) / 2;
      around += Math.hypot(next[0] - here[0], next[1] - here[1]);
    }
    if (corners.size() < 3 || area == 0 || !Double.isFinite(area) || sidesCross(corners)) {
      in.reject(
          "corners",
          "these corners enclose no area, or their sides cross",
          "three or more corners, in order around the vessel: [[\"0 mm\", \"0 mm\"], ...]");
      return ShapeReader.STAND_IN;
    }
    return new Shape.Prism(Math.abs(area), around, height);
  }

  private static boolean sidesCross(List<double[]> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        boolean neighbours = j == i + 1 || (i == 0 && j == n - 1);
        if (!neighbours
            && cross(
                corners.get(i),
                corners.get((i + 1) % n),
                corners.get(j),
                corners.get((j + 1) % n))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean cross(double[] a, double[] b, double[] c, double[] d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  /** Which side of the line from a to b the point c is on, as a sign. */
  private static double side(double[] a, double[] b, double[] c) {
    return Math.signum((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
  }
}
