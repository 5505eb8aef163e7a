package dryfloor.app.view.lesson;

import dryfloor.app.view.Words;
import dryfloor.model.unit.Units;
import java.util.Locale;

/** What levels are read on: millimetres, or inches with their hundredths. */
enum Yardstick {
  MILLIMETRES(1000, 0),
  INCHES(1000 / 25.4, 2);

  private final double perMetre;
  private final int digits;

  Yardstick(double perMetre, int digits) {
    this.perMetre = perMetre;
    this.digits = digits;
  }

  static Yardstick of(Units units) {
    return switch (units) {
      case METRIC -> MILLIMETRES;
      case US -> INCHES;
    };
  }

  /** The name of its unit. */
  String unit() {
    return Words.of("learn.unit." + name());
  }

  /** A height (m) on it. */
  double reading(double metres) {
    return perMetre * metres;
  }

  /** The height (m) of a reading. */
  double metres(double reading) {
    return reading / perMetre;
  }

  /** A reading as it is written. */
  String written(double reading) {
    return String.format(Locale.ROOT, "%." + digits + "f", reading);
  }
}
