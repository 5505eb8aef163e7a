package dryfloor.model.file;

import dryfloor.model.shape.Shape;
import dryfloor.model.unit.QuantityKind;
import java.util.List;

/** Turns the inside corners of a vessel, in order around it, into plan area and rim length. */
final class OutlineCorners {

  private OutlineCorners() {}

  static Shape read(Fields in, double height) {
    List<Pair> corners =
        Pair.readAll(in, "corners", QuantityKind.LENGTH, QuantityKind.LENGTH, Sign.ANY);
    if (!in.sound(height) || !corners.stream().allMatch(Pair::isKnown)) {
      in.flaw();
      return ShapeReader.STAND_IN;
    }
    double area = 0;
    double around = 0;
    for (int i = 0; i < corners.size(); i++) {
      Pair here = corners.get(i);
      Pair next = corners.get((i + 1) % corners.size());
      area += (here.first() * next.second() - next.first() * here.second()) / 2;
      around += Math.hypot(next.first() - here.first(), next.second() - here.second());
    }
    if (corners.size() < 3 || area == 0 || sidesCross(corners)) {
      in.reject(
          "corners",
          "these corners enclose no area, or their sides cross",
          "three or more corners, in order around the vessel: [[\"0 mm\", \"0 mm\"], ...]");
      return ShapeReader.STAND_IN;
    }
    if (isAbsurd(Math.abs(area), QuantityKind.AREA) || isAbsurd(around, QuantityKind.LENGTH)) {
      in.reject(
          "corners",
          "these corners enclose an absurd area, or one with an absurd rim",
          "an area " + QuantityKind.AREA.range() + " with a rim " + QuantityKind.LENGTH.range());
      return ShapeReader.STAND_IN;
    }
    return new Shape.Prism(Math.abs(area), around, height);
  }

  private static boolean isAbsurd(double size, QuantityKind kind) {
    return size < kind.smallest() || size > kind.largest();
  }

  private static boolean sidesCross(List<Pair> corners) {
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

  private static boolean cross(Pair a, Pair b, Pair c, Pair d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  /** Which side of the line from a to b the point c is on, as a sign. */
  private static double side(Pair a, Pair b, Pair c) {
    return Math.signum(
        (b.first() - a.first()) * (c.second() - a.second())
            - (b.second() - a.second()) * (c.first() - a.first()));
  }
}
