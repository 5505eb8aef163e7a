package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.List;

/** Two quantities that belong together, as in a point of a pump curve; in the units inside. */
record Pair(double first, double second) {

  /**
   * The pairs of a list; where a quantity can't be read it is not a number, and {@code in} flawed.
   */
  static List<Pair> readAll(
      Fields in, String field, QuantityKind first, QuantityKind second, Sign sign) {
    Problems problems = in.context().problems();
    List<Pair> pairs = new ArrayList<>();
    for (Located item : in.items(field)) {
      if (item instanceof Located.Sequence sequence && sequence.items().size() == 2) {
        Located one = sequence.items().getFirst();
        Located two = sequence.items().getLast();
        pairs.add(
            new Pair(
                QuantityValue.read(one, "the first of two", first, sign, in.context()),
                QuantityValue.read(two, "the second of two", second, sign, in.context())));
      } else {
        in.flaw();
        problems.add(
            item.place(),
            item.description() + " is no pair",
            "a pair such as [" + first.quotedExample() + ", " + second.quotedExample() + "]");
      }
    }
    return pairs;
  }

  /** Whether both quantities could be read. */
  boolean isKnown() {
    return Double.isFinite(first) && Double.isFinite(second);
  }
}
