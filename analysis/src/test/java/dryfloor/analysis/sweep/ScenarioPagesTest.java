package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.PageTable;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The litres that the pages of the scenarios tell are those that the program answers today. */
class ScenarioPagesTest {

  private static final String NO_LONGER = "can no longer happen";

  /** Litres are told whole: half of one, and a rounding. */
  private static final double LITRES = 0.6;

  @ParameterizedTest
  @CsvSource({
    "loft-reservoir, as-drawn",
    "loft-reservoir, corrected",
    "restaurant-seafood, as-drawn",
    "restaurant-seafood, corrected",
    "research-rack-room, as-drawn",
    "research-rack-room, corrected",
    "coral-nursery, as-drawn",
    "coral-nursery, corrected",
    "grand-hall, corrected",
  })
  void aPageTellsWhatTheProgramAnswers(String scenario, String drawing) throws BaselineProblem {
    Installation installation = Shipped.named(scenario + "/" + drawing);
    Inquiry inquiry = Inquiry.of(installation, () -> false);
    Map<String, Failure> catalogue =
        FailureCatalogue.of(installation).stream()
            .collect(Collectors.toMap(FailureNames::id, failure -> failure));
    List<PageTable.Row> rows =
        PageTable.of(scenario).stream().filter(row -> row.cells().containsKey(drawing)).toList();
    List<String> wrong = new ArrayList<>();
    for (PageTable.Row row : rows) {
      String told = row.cells().getOrDefault(drawing, "");
      List<Failure> failures =
          row.failures().stream().filter(catalogue::containsKey).map(catalogue::get).toList();
      String answer = failures.isEmpty() ? NO_LONGER : answer(worst(inquiry, failures));
      if (!agree(told, answer)) {
        wrong.add(row.failures().getFirst() + ": page '" + told + "', program '" + answer + "'");
      }
    }
    assertThat(rows).isNotEmpty();
    assertThat(wrong).isEmpty();
  }

  private static Outcome worst(Inquiry inquiry, List<Failure> failures) {
    return failures.stream()
        .map(failure -> inquiry.answer(List.of(failure)))
        .map(FailureResult.Answered.class::cast)
        .map(FailureResult.Answered::outcome)
        .max(Comparator.comparingDouble(Outcome::reachedFloors))
        .orElseThrow();
  }

  private static String answer(Outcome outcome) {
    String verdict = outcome.verdict().name().toLowerCase(Locale.ROOT);
    String litres =
        outcome.floors().stream()
            .filter(floor -> floor.received() > 5e-5)
            .map(
                floor ->
                    String.format(
                        Locale.ROOT, "%.1f L on `%s`", floor.received() * 1e3, floor.id()))
            .collect(Collectors.joining(", "));
    return litres.isEmpty() ? verdict : verdict + ": " + litres;
  }

  /** The same verdict, and the same litres on every floor that is told. */
  private static boolean agree(String told, String answer) {
    Map<String, Double> page = PageTable.litres(told);
    Map<String, Double> program = PageTable.litres(answer);
    boolean sameLitres =
        page.entrySet().stream()
            .allMatch(
                floor ->
                    Math.abs(floor.getValue() - program.getOrDefault(floor.getKey(), 0.0))
                        < LITRES);
    return firstWords(told).equals(firstWords(answer))
        && sameLitres
        && program.entrySet().stream()
            .allMatch(floor -> floor.getValue() < LITRES || page.containsKey(floor.getKey()));
  }

  /** The verdict, up to the first sign. */
  private static String firstWords(String cell) {
    return cell.replaceFirst("[:;,].*", "");
  }
}
