package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.Shipped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The part of the page on trust that tells of the third view, from the record. */
public final class ThirdViewSection {

  private static final String INTRODUCTION =
      """
      ## A third view of time

      The stepping in time alone is looked at a third time: the engine's own flows and triggers, taken through time by an explicit
      integrator of order 8 with event detection out of a general library (Hipparchus, Dormand–Prince 8(5,3)), at a tolerance of 1e-10
      a step, with events found to 1e-10 s. It says nothing about the laws; it says whether the engine's own, far longer
      steps end where exact ones do. Agreement means every final level within 0.1 mm and all water that reached
      a floor, a drain or came from a supply within 0.1 % or 1 mL.

      An explicit integrator crosses narrow chambers in milliseconds, so that long failures can't be followed to their end. Those are
      followed for their first hour where that is possible; what still moves then need not agree. The figures are a record with dates
      ([`third-view.csv`](src/test/resources/dryfloor/analysis/simulation/third-view.csv)); every build follows a
      sample again, which also takes in every so many-th failure of `loft-reservoir/corrected`, `restaurant-seafood/corrected` and
      `research-rack-room/corrected`.
      """;

  private final List<String> page = new ArrayList<>();
  private final List<ThirdViewRecord.Line> record = ThirdViewRecord.read();
  private final Map<String, List<ThirdViewRecord.Line>> byScenario =
      record.stream()
          .collect(
              Collectors.groupingBy(
                  line -> line.entry().scenario(), TreeMap::new, Collectors.toList()));

  private ThirdViewSection() {}

  /** The lines of the page. */
  public static List<String> lines() {
    ThirdViewSection section = new ThirdViewSection();
    section.page.addAll(INTRODUCTION.lines().toList());
    section.page.add("");
    section.table();
    section.worst();
    section.notFollowed();
    return section.page;
  }

  private void table() {
    page.add(
        "| drawing | failures | tried | to the end | agree | for an hour | given up |"
            + " level: median, largest | water: median, largest | on |");
    page.add("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    byScenario.forEach((scenario, lines) -> page.add(row(scenario, lines)));
    page.add("");
    page.add(
        "Normal operation counts as a failure here. Levels and water are of those followed to the end.");
    page.add("");
  }

  private static String row(String scenario, List<ThirdViewRecord.Line> lines) {
    List<TwoSteppings> compared = ThirdViewRecord.compared(lines).toList();
    List<TwoSteppings> ended = compared.stream().filter(TwoSteppings::toTheEnd).toList();
    return String.format(
        Locale.ROOT,
        "| `%s` | %d | %d | %d | %d | %d | %d | %s mm | %s mL | %s |",
        scenario,
        FailureCatalogue.of(Shipped.named(scenario)).size() + 1,
        lines.size(),
        ended.size(),
        ended.stream().filter(TwoSteppings::agrees).count(),
        compared.size() - ended.size(),
        lines.size() - compared.size(),
        medianAndLargest(ended, both -> both.level().value() * 1e3),
        medianAndLargest(ended, both -> both.water().value() * 1e6),
        lines.stream()
            .map(line -> line.date().toString())
            .distinct()
            .sorted()
            .collect(Collectors.joining(", ")));
  }

  private static String medianAndLargest(
      List<TwoSteppings> ended, ToDoubleFunction<TwoSteppings> difference) {
    double[] sizes = ended.stream().mapToDouble(difference).map(Math::abs).sorted().toArray();
    return sizes.length == 0
        ? "–"
        : String.format(
            Locale.ROOT, "%.5f, %.4f", sizes[sizes.length / 2], sizes[sizes.length - 1]);
  }

  private void worst() {
    ThirdViewRecord.compared(record)
        .filter(TwoSteppings::toTheEnd)
        .max(Comparator.comparingDouble(both -> both.level().shareOfAllowed()))
        .ifPresent(
            both ->
                page.add(
                    String.format(
                        Locale.ROOT,
                        "The largest difference of a level, %.4f mm of '%s', is in `%s`, `%s`.",
                        Math.abs(both.level().value()) * 1e3,
                        both.level().where(),
                        both.scenario(),
                        both.failure())));
    long beyond =
        ThirdViewRecord.compared(record).filter(both -> !both.toTheEnd() && !both.agrees()).count();
    page.add(
        "Of those that were followed for an hour, "
            + (beyond == 0 ? "none differs" : beyond + " differ")
            + " at that moment by more than is allowed at the end.");
    page.add("");
  }

  private void notFollowed() {
    String missing =
        Shipped.names().stream()
            .filter(scenario -> !byScenario.containsKey(scenario))
            .map(scenario -> "`" + scenario + "`")
            .collect(Collectors.joining(", "));
    if (!missing.isEmpty()) {
      page.add("Not tried: " + missing + ".");
      page.add("");
    }
  }
}
