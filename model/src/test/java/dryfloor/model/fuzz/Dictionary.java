package dryfloor.model.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/** Words that are likely to meet a weak spot of a reader. */
final class Dictionary {

  /** Numbers at and beyond the limits of what can be written, computed with or built. */
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "1",
          "-1",
          "0.5",
          "1e-7",
          "1e-9",
          "1e-12",
          "4.9e-324",
          "1e-308",
          "1e-309",
          "999.999999",
          "1000",
          "1000.0001",
          "1e5",
          "1e6",
          "1e8",
          "1e21",
          "1.7976931348623157e308",
          "1e309",
          "-1e309",
          "1e2147483647",
          "1e-2147483648",
          "1e99999999999",
          "2147483648",
          "9223372036854775808",
          "007",
          "+5",
          ".5",
          "5.",
          "1,5",
          "1/3",
          "1 1/4",
          "3/0",
          "0/0",
          "0x10",
          "1_000",
          "NaN",
          "-Infinity",
          "--1",
          "1e",
          "१२");

  private static final List<String> UNITS =
      List.of(
          "mm", "m", "in", "ft", "um", "m2", "mm2", "in2", "L", "mL", "m3", "gal(US)", "gal",
          "L/min", "m3/s", "gpd", "mL/min", "Pa", "bar", "psi", "m head", "s", "min", "h", "d",
          "°C", "°F", "K", "g/kg", "ppt", "kg", "lb", "t", "%", "", "furlong", "MM", "m m");

  private static final List<String> BARE =
      List.of(
          "true",
          "false",
          "null",
          "NaN",
          "Infinity",
          "-Infinity",
          "INF",
          "0",
          "-0",
          "1",
          "1.5",
          "-7",
          "1e309",
          "1e-400",
          "{}",
          "[]",
          "[[]]",
          "[null]",
          "{\"\": 0}",
          "\"\"",
          "\" \"",
          "\"datum\"",
          "\"80 mm below x.rim\"",
          "\"1 m above datum\"",
          "\"1 m below .rim\"",
          "\"120 mm ± 5 mm\"",
          "\"4 L/min +/- 10 %\"",
          "\"8 to 12 mm\"",
          "\"80 mm ± 5 mm below x.rim\"");

  private static final List<String> TOKENS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ":",
          ",",
          "\"",
          "\\",
          "//",
          "/*",
          "#",
          "'",
          ";",
          "\n",
          "\r",
          "\r\n",
          "\t",
          " ",
          "\u0000",
          "\u001b[2J",
          "\u0085",
          "\u00a0",
          "\u2028",
          "\u202e",
          "\u2066",
          "\ufeff",
          "\ufffd",
          "\uffff",
          "\u0301",
          "\ud83d\udc20",
          "\u201c",
          "\u2212",
          "\\u0000",
          "\\ud800",
          "\\udc00\\ud800",
          "\\u12G4",
          "\\x",
          "\"id\": \"",
          "\"dryfloor\": 2",
          ".rim");

  /**
   * No UTF-8: overlong forms, halves of surrogate pairs, beyond Unicode, cut off, marks of UTF-16.
   */
  private static final List<byte[]> BROKEN_BYTES =
      Stream.of(
              "c080",
              "c1bf",
              "e08080",
              "e0809f",
              "f08080af",
              "eda080",
              "edbfbf",
              "f4908080",
              "f5808080",
              "80",
              "bf",
              "c3",
              "e282",
              "f09f90",
              "fe",
              "ff",
              "feff",
              "fffe",
              "efbbbf",
              "fc8080808080",
              "0000feff")
          .map(HexFormat.of()::parseHex)
          .toList();

  private static final int BEYOND_LONGEST_TEXT = 10_050;
  private static final int BEYOND_MOST_DIGITS = 1_020;
  private static final int BEYOND_DEEPEST = 80;

  private Dictionary() {}

  static String number(RandomGenerator random) {
    return any(NUMBERS, random);
  }

  static String unit(RandomGenerator random) {
    return any(UNITS, random);
  }

  /** A JSON value where another may be expected. */
  static String value(RandomGenerator random) {
    return switch (random.nextInt(12)) {
      case 0 -> "9".repeat(1 + random.nextInt(BEYOND_MOST_DIGITS));
      case 1 -> '"' + "🐠ab".repeat(1 + random.nextInt(BEYOND_LONGEST_TEXT / 4)) + '"';
      case 2 -> number(random);
      default -> any(BARE, random);
    };
  }

  /** What may be put between any two bytes. */
  static byte[] token(RandomGenerator random) {
    return switch (random.nextInt(16)) {
      case 0, 1 -> any(BROKEN_BYTES, random);
      case 2 -> bytes(number(random));
      case 3 -> bytes(unit(random));
      case 4 -> bytes(any(List.of("[", "{\"a\":", "[["), random).repeat(BEYOND_DEEPEST));
      case 5 -> bytes(value(random));
      default -> bytes(any(TOKENS, random));
    };
  }

  /** What may be put between any two characters of a text. */
  static String text(RandomGenerator random) {
    return switch (random.nextInt(4)) {
      case 0 -> number(random);
      case 1 -> unit(random);
      case 2 -> any(List.of(" above ", " below ", " datum", ".rim", "\\u001b", "\\uffff"), random);
      default -> any(TOKENS, random);
    };
  }

  static <T> T any(List<T> all, RandomGenerator random) {
    return all.get(random.nextInt(all.size()));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
