package dryfloor.model.file;

import dryfloor.model.shape.Shape;
import dryfloor.model.unit.QuantityKind;
import java.util.List;

/** Reads the inside of a vessel. */
final class ShapeReader {

  /** Never drawn: takes the place of a shape that could not be read. */
  static final Shape STAND_IN = new Shape.Box(1, 1, 1);

  private ShapeReader() {}

  static Shape read(Fields shape) {
    List<String> given = Form.SHAPE.fields().stream().filter(shape::has).toList();
    if (given.size() != 1) {
      shape.reject(
          "",
          given.isEmpty()
              ? "a shape without an outline"
              : "a shape with " + given.size() + " outlines",
          "a shape is one of " + String.join(", ", Form.SHAPE.fields()));
      return STAND_IN;
    }
    return switch (given.getFirst()) {
      case "box" -> shape.object("box", Form.BOX, ShapeReader::box, STAND_IN);
      case "cylinder" -> shape.object("cylinder", Form.CYLINDER, ShapeReader::cylinder, STAND_IN);
      case "frustum" -> shape.object("frustum", Form.FRUSTUM, ShapeReader::frustum, STAND_IN);
      case "outline" -> shape.object("outline", Form.OUTLINE, ShapeReader::outline, STAND_IN);
      default -> shape.object("table", Form.TABLE, ShapeReader::table, STAND_IN);
    };
  }

  private static Shape box(Fields in) {
    double length = size(in, "length");
    double width = size(in, "width");
    double height = size(in, "height");
    return in.sound(length, width, height) ? new Shape.Box(length, width, height) : STAND_IN;
  }

  private static Shape cylinder(Fields in) {
    double diameter = size(in, "diameter");
    double height = size(in, "height");
    return in.sound(diameter, height) ? new Shape.Cylinder(diameter, height) : STAND_IN;
  }

  private static Shape frustum(Fields in) {
    double bottom = size(in, "bottomDiameter");
    double rim = size(in, "rimDiameter");
    double height = size(in, "height");
    return in.sound(bottom, rim, height) ? new Shape.Frustum(bottom, rim, height) : STAND_IN;
  }

  private static Shape outline(Fields in) {
    double height = size(in, "height");
    if (in.has("corners")) {
      if (in.has("area") || in.has("rimLength")) {
        in.reject(
            "corners",
            "an outline by corners and by area",
            "give either corners or area and rimLength");
      }
      return OutlineCorners.read(in, height);
    }
    double area = in.quantity("area", QuantityKind.AREA, Sign.ABOVE_ZERO);
    double rimLength = size(in, "rimLength");
    return in.sound(area, rimLength, height) ? new Shape.Prism(area, rimLength, height) : STAND_IN;
  }

  private static Shape table(Fields in) {
    double rimLength = size(in, "rimLength");
    List<Pair> pairs =
        Pair.readAll(in, "points", QuantityKind.LENGTH, QuantityKind.VOLUME, Sign.ZERO_OR_MORE);
    if (!in.sound(rimLength) || !pairs.stream().allMatch(Pair::isKnown)) {
      in.flaw();
      return STAND_IN;
    }
    List<Shape.Measured.Point> points =
        pairs.stream().map(pair -> new Shape.Measured.Point(pair.first(), pair.second())).toList();
    try {
      return new Shape.Measured(points, rimLength);
    } catch (IllegalArgumentException e) {
      in.reject(
          "points",
          String.valueOf(e.getMessage()),
          "[[\"0 mm\", \"0 L\"], [\"100 mm\", \"60 L\"], ...]");
      return STAND_IN;
    }
  }

  private static double size(Fields in, String field) {
    return in.quantity(field, QuantityKind.LENGTH, Sign.ABOVE_ZERO);
  }
}
