package dryfloor.model.file;

import dryfloor.model.Tolerance.Spread;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.UncertainText;
import java.util.ArrayList;
import java.util.List;

/** Collects the quantities that carry a tolerance while a file is read. */
final class UncertainTexts {

  /**
   * A text with a tolerance.
   *
   * @param place of the text
   * @param text as it is written
   * @param kind of quantity
   * @param height whether it is a height, which may be measured from something drawn
   * @param inside the value that is drawn, as it is written and in the unit inside
   * @param spread how far it may be off
   */
  record Uncertain(
      FilePlace place,
      String text,
      QuantityKind kind,
      boolean height,
      double inside,
      Spread spread) {

    /** The text with an exact value in its place. */
    String at(double share) {
      return height ? HeightText.at(text, share) : UncertainText.at(kind, text, share);
    }
  }

  private final List<Uncertain> found = new ArrayList<>();

  void add(Uncertain uncertain) {
    found.add(uncertain);
  }

  /** In the order in which they were read. */
  List<Uncertain> all() {
    return List.copyOf(found);
  }
}
