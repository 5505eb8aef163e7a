package dryfloor.model.check;

import dryfloor.model.unit.QuantityFormat;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;

/** Collects findings and words the lengths in them. */
final class Findings {

  /** Lengths closer than this are the same (m): a micrometre is rounding, not a drawing. */
  static final double SAME = 1e-6;

  private static final QuantityFormat FORMAT = new QuantityFormat(Units.METRIC);

  private final List<Finding> all = new ArrayList<>();

  void error(String element, String field, String message, String remedy) {
    all.add(new Finding(Finding.Severity.ERROR, element, field, message, remedy));
  }

  void warning(String element, String field, String message, String remedy) {
    all.add(new Finding(Finding.Severity.WARNING, element, field, message, remedy));
  }

  List<Finding> all() {
    return List.copyOf(all);
  }

  /** A length (m) to the millimetre, or in full where that would hide it. */
  static String length(double metres) {
    return Math.abs(metres) < 0.01 && Math.rint(metres * 1000) != metres * 1000
        ? Math.round(metres * 1e6) / 1000.0 + " mm"
        : FORMAT.level(metres);
  }

  /** Whether the first length clearly exceeds the second; never if either is unknown. */
  static boolean exceeds(double a, double b) {
    return a > b + SAME;
  }
}
