package dryfloor.analysis.reference;

import dryfloor.analysis.plain.SecondOpinion;
import dryfloor.analysis.simulation.ThirdViewSection;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The page on trust, written from the tables and from what the laws answer. */
final class TrustPage {

  private static final String NONE = "none";

  private static final String INTRODUCTION =
      """
      # How do you know?

      The laws of the program are held to numbers that others published. A test asks the law, or a small simulation, for each
      of them, and fails where the answer is further off than the rounding or the stated accuracy of the source allows. The numbers, their
      inputs, sources and tolerances are in
      [`values.json`](src/test/resources/dryfloor/analysis/reference/values.json); a line of the test report is one number. This page is written
      by a test from the same table, and the build fails when it no longer says what the laws answer.

      What this shows is that the laws are those of the books. Whether the engine does what the laws say is the matter of a
      [second, plain simulator](#a-second-simulator) and of a [third view of time](#a-third-view-of-time), at the end of this page. None
      of it shows that an installation behaves as drawn: no measurement of a whole installation of this kind was at
      hand. That is what the wet test is for.

      """;

  private final ReferenceTables tables;
  private final StringBuilder page = new StringBuilder(INTRODUCTION);

  private TrustPage(ReferenceTables tables) {
    this.tables = tables;
  }

  static String of(ReferenceTables tables) {
    TrustPage writer = new TrustPage(tables);
    writer.counts();
    writer.laws();
    writer.differences();
    writer.sources();
    writer.leftOut();
    writer.otherSimulators();
    return writer.page.toString();
  }

  private void counts() {
    int cases = tables.collected().values().stream().mapToInt(count -> count).sum();
    line(
        tables.values().size()
            + " numbers are held to, out of "
            + cases
            + " cases that were collected: "
            + bySeen()
            + ".");
    line("");
  }

  private String bySeen() {
    return Arrays.stream(Seen.values())
        .map(
            seen ->
                tables.values().stream().filter(value -> value.seen() == seen).count()
                    + " "
                    + seen.words())
        .collect(Collectors.joining(", "));
  }

  private void laws() {
    line("## Law by law");
    line("");
    row("law", "taken from", "numbers (largest difference)", "largest of all", "where, and why");
    row("---", "---", "---", "---", "---");
    for (Law law : Law.values()) {
      List<ReferenceValue> values = tables.ofLaws(Set.of(law));
      ReferenceValue worst = worst(values);
      String difference = percent(worst.relativeDifference());
      row(
          law.subject(),
          law.method(),
          kinds(values),
          difference,
          difference.equals(NONE) ? "" : worst + ": " + why(worst));
    }
    line("");
    line(
        "Differences are those of the law over the source. Within a range that sources span there is none.");
    line("");
  }

  private static ReferenceValue worst(List<ReferenceValue> values) {
    return values.stream()
        .max(Comparator.comparingDouble(value -> Math.abs(value.relativeDifference())))
        .orElseThrow();
  }

  private static String why(ReferenceValue value) {
    return value.knownDifference().map(KnownDifference::because).orElse(value.toleranceBecause());
  }

  private static String kinds(List<ReferenceValue> values) {
    return Arrays.stream(Kind.values())
        .filter(kind -> values.stream().anyMatch(value -> value.kind() == kind))
        .map(kind -> counted(values.stream().filter(value -> value.kind() == kind).toList(), kind))
        .collect(Collectors.joining(", "));
  }

  /** How many of one kind, and the largest difference among them. */
  private static String counted(List<ReferenceValue> values, Kind kind) {
    int count = values.size();
    String words = count + " " + kind.words() + (count == 1 ? "" : "s");
    return words + " (" + percent(worst(values).relativeDifference()) + ")";
  }

  private void differences() {
    line("## Where they differ by more than the source allows");
    line("");
    line(
        "Each is understood and held on both sides: a test fails if it grows, and if it goes away.");
    line("");
    row("number", "difference", "why");
    row("---", "---", "---");
    for (ReferenceValue value : tables.values()) {
      value
          .knownDifference()
          .ifPresent(
              known -> row(value.toString(), percent(value.relativeDifference()), known.because()));
    }
    line("");
  }

  private void sources() {
    line("## Sources");
    line("");
    for (Law law : Law.values()) {
      Map<String, Set<String>> places = new LinkedHashMap<>();
      for (ReferenceValue value : tables.ofLaws(Set.of(law))) {
        Set<String> inWork =
            places.computeIfAbsent(value.source().work(), work -> new LinkedHashSet<>());
        value.source().place().ifPresent(inWork::add);
      }
      line("- **" + law.subject() + "**: " + told(places) + ".");
    }
    line("");
  }

  private static String told(Map<String, Set<String>> places) {
    return places.entrySet().stream()
        .map(
            work ->
                work.getValue().isEmpty()
                    ? work.getKey()
                    : work.getKey() + " (" + String.join("; ", work.getValue()) + ")")
        .collect(Collectors.joining("; "));
  }

  private void leftOut() {
    line("## Collected and left out");
    line("");
    for (LeftOut.Reason reason : LeftOut.Reason.values()) {
      List<LeftOut> out =
          tables.leftOut().stream().filter(value -> value.reason() == reason).toList();
      line("- " + out.size() + ": " + reason.words() + ".");
    }
    line("");
    line("The second half of `values.json` lists them, each with its reason.");
  }

  private void otherSimulators() {
    line("");
    SecondOpinion.lines().forEach(this::line);
    ThirdViewSection.lines().forEach(this::line);
  }

  private static String percent(double share) {
    double percent = 100 * share;
    double size = Math.abs(percent);
    if (size < 5e-6) {
      return NONE;
    }
    int digits = size >= 1 ? 1 : size >= 0.01 ? 2 : 5;
    return String.format(Locale.ROOT, "%+." + digits + "f %%", percent).replace('-', '−');
  }

  private void row(String... cells) {
    line("| " + String.join(" | ", cells) + " |");
  }

  private void line(String words) {
    page.append(words).append('\n');
  }
}
