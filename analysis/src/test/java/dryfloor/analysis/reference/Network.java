package dryfloor.analysis.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pipes that meet, as a book draws them: friction is a constant loss, reservoirs are so wide that
 * their levels stand.
 *
 * @param levels of the reservoirs, m
 * @param pipes between reservoirs and junctions
 * @param fed into junctions, m³/s
 * @param taken out of junctions, m³/s
 * @param outlets junctions out of which the rest runs
 */
record Network(
    Map<String, Double> levels,
    List<Line> pipes,
    Map<String, Double> fed,
    Map<String, Double> taken,
    List<String> outlets) {

  /**
   * One pipe.
   *
   * @param name unique
   * @param from reservoir or junction
   * @param to reservoir or junction
   * @param bore m
   * @param losses from end to end, in velocity heads
   */
  record Line(String name, String from, String to, double bore, double losses) {}

  static Network read(Given given) {
    Network network =
        new Network(
            byName(given, "reservoirs_m"),
            given.objects("pipes").stream().map(Network::line).toList(),
            byName(given, "fed_m3_per_s"),
            byName(given, "taken_m3_per_s"),
            given.has("outlet") ? List.of(given.text("outlet")) : List.of());
    given.finish();
    return network;
  }

  private static Line line(Given given) {
    Line line =
        new Line(
            given.text("name"),
            given.text("from"),
            given.text("to"),
            given.number("bore_m"),
            given.number("lossCoefficient"));
    given.finish();
    return line;
  }

  private static Map<String, Double> byName(Given given, String name) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    if (given.has(name)) {
      Given named = given.object(name);
      for (String key : named.names()) {
        numbers.put(key, named.number(key));
      }
    }
    return numbers;
  }

  Line line(String name) {
    return pipes.stream().filter(pipe -> pipe.name().equals(name)).findFirst().orElseThrow();
  }

  boolean isReservoir(String place) {
    return levels.containsKey(place);
  }
}
