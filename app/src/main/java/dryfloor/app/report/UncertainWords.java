package dryfloor.app.report;

import dryfloor.analysis.band.Point;
import dryfloor.model.file.UncertainValue;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** What uncertain values are called, and where they are at a point. */
final class UncertainWords {

  /** Fields whose own word says too little. */
  private static final Map<String, String> OTHERWISE =
      Map.of("at", "height", "kv", "Kv", "along", "place along the run", "raised", "bottom");

  private final List<UncertainValue> values;
  private final Wording wording;

  UncertainWords(List<UncertainValue> values, Wording wording) {
    this.values = values;
    this.wording = wording;
  }

  UncertainValue value(int value) {
    return values.get(value);
  }

  /** "height of the return hole". */
  String name(int value) {
    UncertainValue of = values.get(value);
    String field = field(of.field());
    return of.of().isEmpty() ? field : field + " of " + wording.names().the(of.of());
  }

  /** "shape.box.height" is "height", "contents[0].volume" is "contents 1 volume". */
  private static String field(String path) {
    String bare =
        path.replaceFirst("^shape\\.[a-z]+\\.", "").replaceFirst("^(water|failures)\\.", "");
    StringBuilder words = new StringBuilder();
    for (String step : bare.split("\\.", -1)) {
      int bracket = step.indexOf('[');
      String name = bracket < 0 ? step : step.substring(0, bracket);
      words.append(words.isEmpty() ? "" : " ").append(word(name));
      if (bracket >= 0) {
        int index = Integer.parseInt(step.substring(bracket + 1, step.indexOf(']')));
        words.append(' ').append(index + 1);
      }
    }
    return words.toString();
  }

  private static String word(String name) {
    return switch (name) {
      case "from" -> "first end's";
      case "to" -> "second end's";
      default ->
          OTHERWISE.getOrDefault(
              name, name.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT));
    };
  }

  /** A value somewhere between its ends. */
  String text(int value, double share) {
    return values.get(value).text(share, wording.amounts().units());
  }

  /**
   * Where these values are at a point: "the level of the sump is 235 mm"; all that are not as drawn
   * if none of these is elsewhere.
   */
  String where(Point point, Set<Integer> mattering) {
    boolean any = mattering.stream().anyMatch(i -> point.shares().get(i) != 0);
    return listed(point, any ? mattering : Set.of());
  }

  /** Where all values are that are not as drawn. */
  String where(Point point) {
    return listed(point, Set.of());
  }

  private String listed(Point point, Set<Integer> mattering) {
    List<String> places =
        IntStream.range(0, values.size())
            .filter(i -> point.shares().get(i) != 0)
            .filter(i -> mattering.isEmpty() || mattering.contains(i))
            .mapToObj(i -> "the " + name(i) + is(i) + text(i, point.shares().get(i)))
            .toList();
    return places.isEmpty() ? "everything is as drawn" : Sentences.enumerate(places);
  }

  private String is(int value) {
    return values.get(value).quantities() == 1 ? " is " : " lies ";
  }
}
