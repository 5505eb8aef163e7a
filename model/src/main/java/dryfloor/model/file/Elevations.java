package dryfloor.model.file;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Elevations (m above datum) of everything that heights can be measured from, worked out from the
 * file before its elements are read. What can't be worked out is not a number: whoever reads that
 * field reports why.
 */
final class Elevations {

  private final DrawnIds ids;
  private final Map<String, Double> bottoms = new HashMap<>();
  private final Set<String> underWay = new HashSet<>();
  private final Set<String> circular = new HashSet<>();

  Elevations(DrawnIds ids) {
    this.ids = ids;
  }

  /** A storey's or floor's elevation or a vessel's inside bottom; not a number if unknown. */
  double bottomOf(String id) {
    if (id.equals(HeightText.DATUM)) {
      return 0;
    }
    Double known = bottoms.get(id);
    if (known != null) {
      return known;
    }
    if (!underWay.add(id)) {
      circular.addAll(underWay);
      return Double.NaN;
    }
    double bottom = ids.find(id).map(this::compute).orElse(Double.NaN);
    underWay.remove(id);
    bottoms.put(id, bottom);
    return bottom;
  }

  double rimOf(String id) {
    return bottomOf(id) + ids.find(id).map(drawn -> insideHeight(drawn.node())).orElse(Double.NaN);
  }

  /** Elevation of a junction, supply or drain; not a number if unknown. */
  double pointOf(String id) {
    return ids.find(id)
        .map(drawn -> field(drawn.node(), "elevation", 0, Double.NaN))
        .orElse(Double.NaN);
  }

  /** Whether the elevation of this thing hangs, by whatever way, on itself. */
  boolean isCircular(String id) {
    return Double.isNaN(bottomOf(id)) && circular.contains(id);
  }

  /** Elevation of a height that is measured from {@code base} unless it says otherwise. */
  double elevationOf(HeightText height, double base) {
    return switch (height) {
      case HeightText.Plain plain -> base + plain.metres();
      case HeightText.Relative relative ->
          (relative.rim() ? rimOf(relative.id()) : bottomOf(relative.id())) + relative.metres();
      case HeightText.Unfit unfit -> Double.NaN;
    };
  }

  private double compute(DrawnIds.Drawn drawn) {
    Located.Structure node = drawn.node();
    return switch (drawn.referent()) {
      case STOREY -> field(node, "elevation", 0, Double.NaN);
      case FLOOR -> {
        double storey = baseFrom(node, "storey");
        yield field(node, "offset", storey, storey);
      }
      case VESSEL -> {
        double base = baseFrom(node, "standsIn");
        yield field(node, "raised", base, base);
      }
      case WEIR,
          JUNCTION,
          SUPPLY,
          DRAIN,
          RUN,
          CIRCULATION_PUMP,
          CIRCUIT,
          CONTROL,
          PUMP,
          VALVE,
          OTHER_PART ->
          Double.NaN;
    };
  }

  private double baseFrom(Located.Structure node, String field) {
    return DrawnIds.textOf(node, field).map(this::bottomOf).orElse(Double.NaN);
  }

  private double field(Located.Structure node, String field, double base, double missing) {
    Optional<Located> value = node.find(field);
    if (value.isEmpty()) {
      return missing;
    }
    return value.get() instanceof Located.Text text
        ? elevationOf(HeightText.parse(text.text()), base)
        : Double.NaN;
  }

  private static double insideHeight(Located.Structure vessel) {
    return vessel.find("shape").flatMap(Elevations::heightOfShape).orElse(Double.NaN);
  }

  private static Optional<Double> heightOfShape(Located shape) {
    if (!(shape instanceof Located.Structure structure
        && structure.members().size() == 1
        && structure.members().getFirst().value() instanceof Located.Structure body)) {
      return Optional.empty();
    }
    if (body.find("points").orElse(null) instanceof Located.Sequence points
        && !points.items().isEmpty()
        && points.items().getLast() instanceof Located.Sequence point
        && !point.items().isEmpty()) {
      return metres(point.items().getFirst());
    }
    return body.find("height").flatMap(Elevations::metres);
  }

  private static Optional<Double> metres(Located value) {
    return value instanceof Located.Text text
            && HeightText.parse(text.text()) instanceof HeightText.Plain plain
        ? Optional.of(plain.metres())
        : Optional.empty();
  }
}
