package dryfloor.model.file;

import dryfloor.model.Tolerance.Spread;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.UncertainText;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A height as it is written: "580 mm ± 5 mm" or "80 mm below display.rim". */
sealed interface HeightText {

  Pattern TOLERANCE_LAST = Pattern.compile(".+\\s(above|below)\\s+\\S+\\s*(±|\\+/-|\\sto\\s).*");
  Pattern RELATIVE = Pattern.compile("(.+?)\\s+(above|below)\\s+(\\S+)");
  String DATUM = "datum";
  Spread NOTHING = new Spread.Amount(0);
  String WANTED = "a height such as \"580 mm\" or \"80 mm below display.rim\"";
  String RIM = ".rim";

  /** Above whatever heights are measured from at this place (m, may be negative). */
  record Plain(double metres, Optional<Spread> spread) implements HeightText {}

  /**
   * Above (or, negative, below) something drawn.
   *
   * @param id of a storey, floor or vessel, or "datum"
   * @param rim whether the rim of that vessel is meant, not its inside bottom
   */
  record Relative(double metres, Optional<Spread> spread, String id, boolean rim)
      implements HeightText {}

  /** Not a height: what was found and what is wanted. */
  record Unfit(String found, String wanted) implements HeightText {}

  static HeightText parse(String text) {
    Matcher relative = RELATIVE.matcher(text.strip());
    if (!relative.matches()) {
      return TOLERANCE_LAST.matcher(text.strip()).matches()
          ? new Unfit(
              "the tolerance in '" + text + "' stands behind what the height is measured from",
              "a height such as \"80 mm ± 5 mm below display.rim\"")
          : plain(text);
    }
    String reference = relative.group(3);
    boolean rim = reference.endsWith(RIM);
    String id = rim ? reference.substring(0, reference.length() - RIM.length()) : reference;
    double sign = relative.group(2).equals("above") ? 1 : -1;
    return switch (plain(relative.group(1))) {
      case Plain plain -> new Relative(sign * plain.metres(), plain.spread(), id, rim);
      case Relative nested -> nested;
      case Unfit unfit -> unfit;
    };
  }

  private static HeightText plain(String text) {
    return switch (UncertainText.parse(QuantityKind.LENGTH, text)) {
      case UncertainText.Parsed.Value value ->
          value.spread().orElse(NOTHING) instanceof Spread.Share
              ? new Unfit(
                  "'"
                      + text
                      + "' is a percentage of a height, which depends on where it is measured from",
                  "a height such as \"580 mm ± 5 mm\"")
              : new Plain(value.inside(), value.spread());
      case UncertainText.Parsed.Unfit unfit -> new Unfit(unfit.found(), WANTED);
    };
  }

  /** A text that was read, with an exact height in the place of the uncertain one. */
  static String at(String text, double share) {
    Matcher relative = RELATIVE.matcher(text.strip());
    return relative.matches()
        ? UncertainText.at(QuantityKind.LENGTH, relative.group(1), share) + measuredFrom(text)
        : UncertainText.at(QuantityKind.LENGTH, text, share);
  }

  /** What a relative height is measured from, with a space before it: " below display.rim". */
  static String measuredFrom(String text) {
    Matcher relative = RELATIVE.matcher(text.strip());
    return relative.matches() ? " " + relative.group(2) + " " + relative.group(3) : "";
  }

  /** Adds it to those that carry a tolerance if it does. */
  default void note(Located.Text written, UncertainTexts found) {
    Optional<Plain> plain =
        switch (this) {
          case Plain self -> Optional.of(self);
          case Relative relative ->
              Optional.of(
                  new Plain(
                      measuredFrom(written.text()).startsWith(" below")
                          ? -relative.metres()
                          : relative.metres(),
                      relative.spread()));
          case Unfit unfit -> Optional.empty();
        };
    plain
        .filter(height -> height.spread().isPresent())
        .ifPresent(
            height ->
                found.add(
                    new UncertainTexts.Uncertain(
                        written.place(),
                        written.text(),
                        QuantityKind.LENGTH,
                        true,
                        height.metres(),
                        height.spread().get())));
  }
}
