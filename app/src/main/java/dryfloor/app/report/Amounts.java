package dryfloor.app.report;

import dryfloor.model.unit.QuantityFormat;
import dryfloor.model.unit.Units;
import java.util.Locale;

/**
 * Quantities in the words of a report: as {@link QuantityFormat} writes them, with signs for
 * changes, hourly flows for what drips on for days, no more digits than anybody could measure, and
 * long numbers in groups of three (ISO 80000-1, 7.3.1: by a space, never by a point or comma; from
 * memory).
 *
 * @param units that the reader asked for
 */
public record Amounts(Units units) {

  /** Less than half a millilitre (m³) is no water at all. */
  private static final double DROP = 5e-7;

  /** Less than this (m³) wets a finger: no column of a table needs it. */
  private static final double DRIBBLE_METRIC = 1e-5;

  private static final double LITRE = 1e-3;
  private static final double US_GALLON = 231 * 0.0254 * 0.0254 * 0.0254;
  private static final double DRIBBLE_US = 0.01 * US_GALLON;
  private static final double LEAST_RATE = 0.05;

  private static final double SOON = 0.05;
  private static final double LITRE_PER_HOUR = LITRE / 3600;
  private static final double US_GALLON_PER_HOUR = US_GALLON / 3600;

  /** A hyphen is easily overlooked before a figure. */
  private static final String MINUS = "−";

  /** Numbers of more digits than this are grouped. */
  private static final int READ_AT_A_GLANCE = 4;

  private static final int GROUP = 3;

  /** No line breaks at it, and every console has it. */
  private static final char BETWEEN_GROUPS = '\u00a0';

  /** A height or depth (m). */
  public String level(double metres) {
    return grouped(plainZero(format().level(metres)));
  }

  /** A length of pipe (m). */
  public String length(double metres) {
    return format().length(metres);
  }

  /** An elevation in the building (m), above or below its datum. */
  public String elevation(double metres) {
    String text = format().length(metres);
    if (Double.parseDouble(text.substring(0, text.indexOf(' '))) == 0) {
      return "±" + text.replace("-", "");
    }
    return metres > 0 ? "+" + text : text.replace("-", MINUS);
  }

  /** A change of height (m), with its sign. */
  public String levelChange(double metres) {
    return signed(level(metres));
  }

  /** Whether a volume (m³) is any water at all. */
  boolean isWater(double cubicMetres) {
    return Math.abs(cubicMetres) >= DROP;
  }

  /** Whether a volume (m³) is enough to be told beside others. */
  public boolean isWorthTelling(double cubicMetres) {
    return Math.abs(cubicMetres) >= dribble();
  }

  /** A volume (m³). */
  public String volume(double cubicMetres) {
    if (!isWater(cubicMetres)) {
      return volumeZero();
    }
    if (!isWorthTelling(cubicMetres)) {
      return switch (units) {
        case METRIC -> "under 10 mL";
        case US -> "under 0.01 gal";
      };
    }
    return grouped(
        switch (units) {
          case METRIC ->
              Math.abs(cubicMetres) < 0.995e-3
                  ? millilitres(cubicMetres * 1e6)
                  : wholeAboveTen(cubicMetres / LITRE, format().volume(cubicMetres));
          case US ->
              wholeAboveTen(cubicMetres / US_GALLON, format().volume(cubicMetres))
                  .replace("gal(US)", "gal");
        });
  }

  /** A volume (m³) that is found to a tenth of a litre, or a hundredth of a gallon. */
  public String fineVolume(double cubicMetres) {
    return grouped(
        switch (units) {
          case METRIC -> String.format(Locale.ROOT, "%.1f L", cubicMetres / LITRE);
          case US -> String.format(Locale.ROOT, "%.2f gal", cubicMetres / US_GALLON);
        });
  }

  /** A salinity (g/kg) that is to be told from one just beside it. */
  public String fineSalinity(double salinity) {
    return String.format(Locale.ROOT, "%.2f g/kg", salinity);
  }

  /** A volume (m³) for a table, in which what is not worth telling is nothing. */
  public String tabled(double cubicMetres) {
    return isWorthTelling(cubicMetres) ? volume(cubicMetres) : volumeZero();
  }

  /** A change of volume (m³), with its sign. */
  public String volumeChange(double cubicMetres) {
    return isWorthTelling(cubicMetres) ? signed(volume(cubicMetres)) : volumeZero();
  }

  /** A flow (m³/s) by the hour, as one that goes on is best understood. */
  public String hourlyFlow(double flow) {
    return grouped(
        switch (units) {
          case METRIC -> rate(flow / LITRE_PER_HOUR) + " L/h";
          case US -> rate(flow / US_GALLON_PER_HOUR) + " gal/h";
        });
  }

  /** A flow (m³/s) at a moment: litres or gallons in a minute. */
  public String flow(double flow) {
    double exact =
        60
            * flow
            / switch (units) {
              case METRIC -> LITRE;
              case US -> US_GALLON;
            };
    String text = wholeAboveTen(exact, format().flow(flow)).replace("gal(US)", "gal");
    int space = text.indexOf(' ');
    double value = Double.parseDouble(text.substring(0, space));
    return grouped(value < 1000 ? text : Math.round(value / 100) * 100 + text.substring(space));
  }

  /** A time (s). */
  public String time(double seconds) {
    return Math.abs(seconds) < SOON ? "0 s" : format().time(seconds);
  }

  /** A long time (s) in hours only, as unattended time is spoken of: "72 h". */
  public String hours(double seconds) {
    return number(seconds / 3600).replaceFirst("\\.0$", "") + " h";
  }

  /** A salinity (g/kg). */
  public String salinity(double salinity) {
    return format().salinity(salinity);
  }

  private QuantityFormat format() {
    return new QuantityFormat(units);
  }

  private String volumeZero() {
    return switch (units) {
      case METRIC -> "0 L";
      case US -> "0 gal";
    };
  }

  private static String grouped(String given) {
    String text = given.startsWith("-") ? MINUS + given.substring(1) : given;
    int start = text.startsWith(MINUS) ? 1 : 0;
    int end = start;
    while (end < text.length() && Character.isDigit(text.charAt(end))) {
      end++;
    }
    if (end - start <= READ_AT_A_GLANCE) {
      return text;
    }
    StringBuilder digits = new StringBuilder(text);
    for (int at = end - GROUP; at > start; at -= GROUP) {
      digits.insert(at, BETWEEN_GROUPS);
    }
    return digits.toString();
  }

  private static String signed(String text) {
    boolean zero = text.startsWith("0 ") || text.matches("0\\.0+ .*");
    return zero || text.startsWith(MINUS) ? text : "+" + text;
  }

  private static String plainZero(String text) {
    return text.matches("-?0(\\.0+)? .*") ? text.replaceFirst("-?0(\\.0+)?", "0") : text;
  }

  private double dribble() {
    return switch (units) {
      case METRIC -> DRIBBLE_METRIC;
      case US -> DRIBBLE_US;
    };
  }

  /** Two digits, which is all that a measuring jug shows. */
  private static String millilitres(double value) {
    long whole = Math.round(value);
    return (Math.abs(whole) < 100 ? whole : Math.round(value / 10) * 10) + " mL";
  }

  private static String rate(double value) {
    return value < LEAST_RATE ? "under 0.1" : number(value);
  }

  /** Rounds the exact value, not what is rounded already. */
  private static String wholeAboveTen(double exact, String text) {
    return Math.abs(exact) < 9.95 || !Double.isFinite(exact)
        ? text
        : Math.round(exact) + text.substring(text.indexOf(' '));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
  }
}
