package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A height as it is written: "580 mm" or "80 mm below display.rim". */
sealed interface HeightText {

  Pattern RELATIVE = Pattern.compile("(.+?)\\s+(above|below)\\s+(\\S+)");
  String DATUM = "datum";
  String RIM = ".rim";

  /** Above whatever heights are measured from at this place (m, may be negative). */
  record Plain(double metres) implements HeightText {}

  /**
   * Above (or, negative, below) something drawn.
   *
   * @param id of a storey, floor or vessel, or "datum"
   * @param rim whether the rim of that vessel is meant, not its inside bottom
   */
  record Relative(double metres, String id, boolean rim) implements HeightText {}

  /** Not a height: what was found and what is wanted. */
  record Unfit(String found, String wanted) implements HeightText {}

  static HeightText parse(String text) {
    Matcher relative = RELATIVE.matcher(text.strip());
    if (!relative.matches()) {
      return switch (QuantityText.parse(QuantityKind.LENGTH, text)) {
        case QuantityText.Parsed.Value value -> new Plain(value.inside());
        case QuantityText.Parsed.Unfit unfit -> unfit(unfit.found());
      };
    }
    String reference = relative.group(3);
    boolean rim = reference.endsWith(RIM);
    String id = rim ? reference.substring(0, reference.length() - RIM.length()) : reference;
    double sign = relative.group(2).equals("above") ? 1 : -1;
    return switch (QuantityText.parse(QuantityKind.LENGTH, relative.group(1))) {
      case QuantityText.Parsed.Value value -> new Relative(sign * value.inside(), id, rim);
      case QuantityText.Parsed.Unfit unfit -> unfit(unfit.found());
    };
  }

  private static HeightText unfit(String found) {
    return new Unfit(found, "a height such as \"580 mm\" or \"80 mm below display.rim\"");
  }
}
