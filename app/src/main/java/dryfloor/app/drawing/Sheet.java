package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A drawing as it grows: shapes in the order of painting, and labels that look for a free place
 * once all the shapes are known.
 */
final class Sheet {

  /** A label keeps this far from others (points). */
  private static final double CLEAR = 2;

  /** So far out a label is looked for a place before it has to share one. */
  private static final int MOST_RINGS = 60;

  /** How much a busy place is disliked, against one with a line through it. */
  private static final double BUSY_WEIGHT = 0.2;

  /** So far out a place may be better than one near by that covers something. */
  private static final int NEAR_RINGS = 8;

  /** A leader longer than this (points) is hard to follow where much else is drawn. */
  private static final double FAR = 60;

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Shape> labels = new ArrayList<>();
  private final List<Area> taken = new ArrayList<>();
  private final List<Area> better = new ArrayList<>();
  private final List<Area> busy = new ArrayList<>();

  /** Where labels stood before: what finds its place anew keeps clear of them. */
  private final List<Area> kept = new ArrayList<>();

  private final Area bounds;
  private final Map<Label.Owner, Label.Spot> places;
  private final boolean brief;

  private final List<Label> later = new ArrayList<>();
  private final List<Label> key = new ArrayList<>();

  Sheet(Area bounds) {
    this(bounds, new HashMap<>());
  }

  /**
   * A sheet on which labels stand where they stood before.
   *
   * @param places where they stood; those found anew are added
   */
  Sheet(Area bounds, Map<Label.Owner, Label.Spot> places) {
    this(bounds, places, false);
  }

  private Sheet(Area bounds, Map<Label.Owner, Label.Spot> places, boolean brief) {
    this.bounds = bounds;
    this.places = places;
    this.brief = brief;
    places.values().forEach(spot -> kept.add(spot.area()));
  }

  /**
   * A sheet so full that only labels that matter, and those that have room, stand on it; what would
   * stand far from what it belongs to is a number there, and told in a key.
   */
  static Sheet brief(Area bounds) {
    return new Sheet(bounds, new HashMap<>(), true);
  }

  /** Whether there is room for nothing but what matters. */
  boolean isBrief() {
    return brief;
  }

  void add(Shape shape) {
    shapes.add(shape);
  }

  /** A shape that labels had better not cover. */
  void addKeptClear(Shape.Line line) {
    shapes.add(line);
    for (int i = 1; i < line.points().size(); i++) {
      better.add(Area.around(line.points().get(i - 1), line.points().get(i), 1.5));
    }
  }

  /** Text at a fixed place, which labels then keep clear of. */
  void text(Shape.Text text) {
    labels.add(text);
    taken.add(text.area());
  }

  /** Room that a label takes only if there is none in the open. */
  void avoid(Area area) {
    busy.add(area);
  }

  /** Room that no label may take. */
  void reserve(Area area) {
    taken.add(area);
  }

  /**
   * Lines of text near a point, where they cover least; away from it with a leader if need be.
   * Nothing to say takes no room.
   */
  void label(Label label) {
    if (label.lines().stream().allMatch(line -> line.text().isEmpty())) {
      return;
    }
    if (brief && label.dispensable()) {
      later.add(label);
    } else {
      place(label);
    }
  }

  private void place(Label label) {
    Placed best =
        Optional.ofNullable(places.get(label.owner()))
            .map(label::at)
            .filter(this::stillFits)
            .map(spot -> new Placed(spot, false, 0, 0))
            .orElseGet(() -> found(label));
    if (brief && label.dispensable() && (best.spot().away() || best.isPoor())) {
      return;
    }
    if (brief && label.lines().size() > 1 && best.isFarFrom(label.anchor())) {
      number(label);
      return;
    }
    places.put(label.owner(), best.spot());
    if (best.spot().away()) {
      shapes.add(Shape.line(label.anchor(), best.nearest(label.anchor()), Style.LEADER));
    }
    best.texts().forEach(this::text);
  }

  /** A number beside what a label belongs to, which stands in the key. */
  private void number(Label label) {
    key.add(label);
    Placed best = found(Label.number(key.size(), label.anchor()));
    if (best.spot().away()) {
      shapes.add(Shape.line(label.anchor(), best.nearest(label.anchor()), Style.LEADER));
    }
    numbered(best.spot());
  }

  /** A number on its disc. */
  void numbered(Label.Spot spot) {
    spot.texts().forEach(this::text);
    Point middle = spot.area().middle();
    shapes.add(new Shape.Circle(middle, Label.DISC, Style.SYMBOL));
    reserve(Area.around(middle, middle, Label.DISC));
  }

  /** What the numbers stand for, in their order, once all labels have found their places. */
  List<Label> key() {
    placeWhatIsLeft();
    return List.copyOf(key);
  }

  /** Whether a label can stand where it stood, although it or another may say more now. */
  private boolean stillFits(Label.Spot spot) {
    Area area = spot.area();
    return area.within(bounds) && taken.stream().noneMatch(area::overlaps);
  }

  private Placed found(Label label) {
    Placed best = best(Stream.concat(label.places(), rings(label, 1, NEAR_RINGS)));
    for (int ring = NEAR_RINGS + 1; ring <= MOST_RINGS && best.isPoor(); ring++) {
      Placed farther = best(label.ring(ring));
      best = Placed.BEST.compare(farther, best) < 0 ? farther : best;
    }
    return best;
  }

  private static Stream<Label.Spot> rings(Label label, int first, int last) {
    return IntStream.rangeClosed(first, last).boxed().flatMap(label::ring);
  }

  private Placed best(Stream<Label.Spot> spots) {
    return spots.map(this::judged).min(Placed.BEST).orElseThrow();
  }

  private Placed judged(Label.Spot spot) {
    Area area = spot.area();
    Area wanted = grown(area);
    double hits = Stream.concat(taken.stream(), kept.stream()).mapToDouble(wanted::common).sum();
    double covers =
        better.stream().mapToDouble(area::common).sum()
            + BUSY_WEIGHT * busy.stream().mapToDouble(area::common).sum();
    return new Placed(spot, !area.within(bounds), hits, covers);
  }

  private static Area grown(Area area) {
    return new Area(
        area.left() - CLEAR, area.top() - CLEAR, area.right() + CLEAR, area.bottom() + CLEAR);
  }

  /** Everything, after the labels that only take what room is left. */
  List<Shape> all() {
    placeWhatIsLeft();
    List<Shape> all = new ArrayList<>(shapes);
    all.addAll(labels);
    return all;
  }

  private void placeWhatIsLeft() {
    later.forEach(this::place);
    later.clear();
  }

  /**
   * A place for a label and how good it is. Where none is free, one on the paper that covers least
   * of other labels is better than one that nobody sees.
   *
   * @param outside whether it is not all on the paper
   * @param hits what it covers of other labels (points²)
   * @param covers what it covers of the drawing (points²)
   */
  private record Placed(Label.Spot spot, boolean outside, double hits, double covers) {

    static final Comparator<Placed> BEST =
        Comparator.comparing(Placed::outside)
            .thenComparingDouble(Placed::hits)
            .thenComparingDouble(placed -> placed.covers() + placed.spot().dislike());

    boolean isPoor() {
      return outside || hits > 0;
    }

    boolean isFarFrom(Point anchor) {
      return hits > 0 || outside || (spot.away() && nearest(anchor).distanceTo(anchor) > FAR);
    }

    List<Shape.Text> texts() {
      return spot.texts();
    }

    Point nearest(Point anchor) {
      Area area = spot.area();
      return new Point(
          Math.clamp(anchor.x(), area.left(), area.right()),
          Math.clamp(anchor.y(), area.top(), area.bottom()));
    }
  }

  /** A line of a label. */
  record LabelLine(String text, double size, Style style) {}

  /** Puts texts on top of one another from a corner on. */
  static List<Shape.Text> stacked(List<LabelLine> lines, Point top, Anchor anchor) {
    List<Shape.Text> texts = new ArrayList<>();
    double y = top.y();
    for (LabelLine line : lines) {
      y += line.size() * 1.2;
      texts.add(
          new Shape.Text(
              new Point(top.x(), y - line.size() * 0.2),
              line.text(),
              anchor,
              line.size(),
              line.style()));
    }
    return texts;
  }
}
