package dryfloor.analysis.plain;

import dryfloor.analysis.installation.Shipped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The part of the page on trust that tells of the plain simulator, from the record. */
public final class SecondOpinion {

  private final List<String> page = new ArrayList<>();
  private final Map<String, List<ComparisonRecord.Line>> byScenario =
      ComparisonRecord.read().stream()
          .collect(
              Collectors.groupingBy(
                  line -> line.entry().scenario(), TreeMap::new, Collectors.toList()));

  private SecondOpinion() {}

  /** The lines of the page. */
  public static List<String> lines() {
    SecondOpinion section = new SecondOpinion();
    section.introduction();
    section.table();
    section.explained();
    section.notCompared();
    return section.page;
  }

  private void introduction() {
    page.add("## A second simulator");
    page.add("");
    page.add(
        """
        In the tests there is a second, plain simulator (package `plain`): the same laws, written anew from the design and from textbooks,
        with small explicit steps of time and every unknown found by trial. It shares neither code nor method with the engine, and is
        slower by a factor between ten and some thousand. Both answer the same failures; below is how far apart they end. Agreement means the same verdict, every final level
        within 0.5 mm, and all water that reached a floor, a drain or came from a supply within 0.2 % and 0.1 L (a film that the plain
        simulator leaves on wide floors when it stops).

        The figures are a record with dates
        ([`comparison.csv`](src/test/resources/dryfloor/analysis/plain/comparison.csv)), because answering them all takes hours;
        `DEVELOPERS.md` says how to renew it. Every build answers a sample again with both, and holds
        what the engine says today about the smaller drawings against the record.
        """
            .stripTrailing());
    page.add("");
  }

  private void table() {
    page.add(
        "| drawing | failures | compared | agree | explained | level: median, largest | water: median, largest"
            + " | on |");
    page.add("| --- | --- | --- | --- | --- | --- | --- | --- |");
    byScenario.forEach((scenario, lines) -> page.add(row(scenario, lines)));
    List<Comparison> all = compared(byScenario.values().stream().flatMap(List::stream).toList());
    page.add(
        "| all | "
            + byScenario.values().stream().mapToInt(List::size).sum()
            + " | "
            + counts(all)
            + " | |");
    page.add("");
    page.add(
        "Normal operation counts as a failure here. Levels and water are, of each, the worst of all places.");
    String missing =
        Shipped.names().stream()
            .filter(scenario -> !byScenario.containsKey(scenario))
            .map(scenario -> "`" + scenario + "`")
            .collect(Collectors.joining(", "));
    if (!missing.isEmpty()) {
      page.add("Not run at all: " + missing + ". Each step is the dearer, the larger the house.");
    }
    page.add("");
  }

  private static String row(String scenario, List<ComparisonRecord.Line> lines) {
    String dates =
        lines.stream()
            .map(line -> line.date().toString())
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return "| `"
        + scenario
        + "` | "
        + lines.size()
        + " | "
        + counts(compared(lines))
        + " | "
        + dates
        + " |";
  }

  private static String counts(List<Comparison> compared) {
    long agree = compared.stream().filter(Comparison::agrees).count();
    return String.format(
        Locale.ROOT,
        "%d | %d | %d | %s mm | %s L",
        compared.size(),
        agree,
        compared.size() - agree,
        medianAndLargest(compared, both -> both.level().value() * 1e3),
        medianAndLargest(compared, both -> both.water().value() * 1e3));
  }

  private static String medianAndLargest(
      List<Comparison> compared, ToDoubleFunction<Comparison> difference) {
    double[] sizes = compared.stream().mapToDouble(difference).map(Math::abs).sorted().toArray();
    return sizes.length == 0
        ? "–"
        : String.format(
            Locale.ROOT, "%.3f, %.2f", sizes[sizes.length / 2], sizes[sizes.length - 1]);
  }

  static List<Comparison> compared(Collection<ComparisonRecord.Line> lines) {
    return lines.stream()
        .map(ComparisonRecord.Line::entry)
        .filter(Entry.Compared.class::isInstance)
        .map(entry -> ((Entry.Compared) entry).comparison())
        .toList();
  }

  private void explained() {
    page.add(
        "Where they differ by more than that, and why. Each reason names its failures and how far they may differ; a test fails");
    page.add("where one grows, and where one is no longer needed.");
    page.add("");
    for (Explained reason : Explained.values()) {
      List<Comparison> cases =
          compared(byScenario.values().stream().flatMap(List::stream).toList()).stream()
              .filter(both -> !both.agrees() && reason.explains(both))
              .toList();
      page.add(
          "- "
              + reason.words()
              + " "
              + cases.size()
              + (cases.size() == 1 ? " case" : " cases")
              + worst(cases));
    }
    page.add("");
  }

  private static String worst(List<Comparison> cases) {
    Comparator<Comparison> byLevel =
        Comparator.comparingDouble(both -> Math.abs(both.level().value()));
    Comparator<Comparison> byWater =
        Comparator.comparingDouble(both -> Math.abs(both.water().share()));
    if (cases.isEmpty()) {
      return ".";
    }
    Comparison level = cases.stream().max(byLevel).orElseThrow();
    Comparison water = cases.stream().max(byWater).orElseThrow();
    return String.format(
        Locale.ROOT,
        ", at most %.2f mm (`%s`, `%s`) and %.2f %% of the water (`%s`, `%s`).",
        Math.abs(level.level().value()) * 1e3,
        level.scenario(),
        level.failure(),
        Math.abs(water.water().share()) * 100,
        water.scenario(),
        water.failure());
  }

  private void notCompared() {
    for (Entry.Why why : Entry.Why.values()) {
      Map<String, List<String>> failures = new TreeMap<>();
      byScenario.forEach(
          (scenario, lines) ->
              lines.forEach(
                  line -> {
                    if (line.entry() instanceof Entry.NotCompared not && not.why() == why) {
                      failures
                          .computeIfAbsent(scenario, s -> new ArrayList<>())
                          .add("`" + not.failure() + "`");
                    }
                  }));
      if (!failures.isEmpty()) {
        page.add("Not compared, because " + why.words() + ":");
        page.add("");
        failures.forEach(
            (scenario, ids) ->
                page.add(
                    "- `" + scenario + "`, " + ids.size() + ": " + String.join(", ", ids) + "."));
        page.add("");
      }
    }
  }
}
