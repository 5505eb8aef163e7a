package dryfloor.model.file;

import java.util.ArrayDeque;
import java.util.Deque;
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

  /**
   * What the elevation of something hangs on: always one other thing.
   *
   * @param on id of that thing
   * @param above elevation above it (m)
   */
  private record Link(String on, double above) {}

  private final DrawnIds ids;
  private final Map<String, Double> bottoms = new HashMap<>();
  private final Set<String> circular = new HashSet<>();

  Elevations(DrawnIds ids) {
    this.ids = ids;
    bottoms.put(HeightText.DATUM, 0.0);
  }

  /** A storey's or floor's elevation or a vessel's inside bottom; not a number if unknown. */
  double bottomOf(String id) {
    Deque<Link> chain = new ArrayDeque<>();
    Deque<String> names = new ArrayDeque<>();
    Set<String> seen = new HashSet<>();
    String current = id;
    while (!bottoms.containsKey(current)) {
      if (!seen.add(current)) {
        circular.addAll(seen);
        break;
      }
      Link link = ids.find(current).map(this::link).orElse(new Link(HeightText.DATUM, Double.NaN));
      names.push(current);
      chain.push(link);
      current = link.on();
    }
    double bottom = bottoms.getOrDefault(current, Double.NaN);
    while (!chain.isEmpty()) {
      bottom += chain.pop().above();
      bottoms.put(names.pop(), bottom);
    }
    return bottom;
  }

  double rimOf(String id) {
    return bottomOf(id) + heightOf(id);
  }

  private double heightOf(String id) {
    return ids.find(id).map(drawn -> insideHeight(drawn.node())).orElse(Double.NaN);
  }

  /** Elevation of a junction, supply or drain; not a number if unknown. */
  double pointOf(String id) {
    return ids.find(id)
        .map(drawn -> link(drawn.node(), "elevation", HeightText.DATUM, Double.NaN))
        .map(link -> bottomOf(link.on()) + link.above())
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

  private Link link(DrawnIds.Drawn drawn) {
    Located.Structure node = drawn.node();
    return switch (drawn.referent()) {
      case STOREY -> link(node, "elevation", HeightText.DATUM, Double.NaN);
      case FLOOR -> link(node, "offset", DrawnIds.textOf(node, "storey").orElse(""), 0);
      case VESSEL -> link(node, "raised", DrawnIds.textOf(node, "standsIn").orElse(""), 0);
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
          new Link(HeightText.DATUM, Double.NaN);
    };
  }

  private Link link(Located.Structure node, String field, String base, double missing) {
    Optional<Located> value = node.find(field);
    if (value.isEmpty()) {
      return new Link(base, missing);
    }
    if (!(value.get() instanceof Located.Text text)) {
      return new Link(base, Double.NaN);
    }
    return switch (HeightText.parse(text.text())) {
      case HeightText.Plain plain -> new Link(base, plain.metres());
      case HeightText.Relative relative ->
          new Link(
              relative.id(), relative.metres() + (relative.rim() ? heightOf(relative.id()) : 0));
      case HeightText.Unfit unfit -> new Link(base, Double.NaN);
    };
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
