package dryfloor.app.report;

import dryfloor.app.drawing.Scene;
import java.util.Locale;

/** Elevations on a picture in the reader's units. */
record SceneHeights(Amounts amounts) implements Scene.Heights {

  private static final double FOOT = 0.3048;

  @Override
  public String label(double elevation) {
    return amounts.elevation(elevation).replace("-", "−");
  }

  @Override
  public double step() {
    return switch (amounts.units()) {
      case METRIC -> 0.5;
      case US -> 2 * FOOT;
    };
  }

  @Override
  public String unit() {
    return switch (amounts.units()) {
      case METRIC -> "m";
      case US -> "ft";
    };
  }

  @Override
  public String number(double elevation) {
    String text =
        switch (amounts.units()) {
          case METRIC -> String.format(Locale.ROOT, "%.1f", elevation);
          case US -> String.format(Locale.ROOT, "%.0f", elevation / FOOT);
        };
    return text.matches("-0(\\.0)?") ? text.substring(1) : text.replace("-", "−");
  }
}
