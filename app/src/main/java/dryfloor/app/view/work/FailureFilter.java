package dryfloor.app.view.work;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.app.report.Answer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which failures a list shows.
 *
 * @param text that must be in what is said of it; empty for any
 * @param answers that are shown
 * @param circuit id of the circuit it has to do with
 * @param storey id of the storey it has to do with
 * @param component id of the component it happens to
 */
public record FailureFilter(
    String text,
    Set<Answer> answers,
    Optional<String> circuit,
    Optional<String> storey,
    Optional<String> component) {

  /** Shows everything. */
  public static final FailureFilter NONE =
      new FailureFilter(
          "", Set.of(Answer.values()), Optional.empty(), Optional.empty(), Optional.empty());

  public FailureFilter {
    answers = Set.copyOf(answers);
  }

  /**
   * Whether a failure is shown. One of the whole building has to do with every circuit and storey.
   *
   * @param said all that the list says of it
   */
  public boolean shows(Failure failure, Answer answer, String said, Belonging belonging) {
    List<String> components = FailureTraits.components(failure);
    boolean everywhere = components.isEmpty();
    return answers.contains(answer)
        && said.toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT))
        && component.map(components::contains).orElse(true)
        && (everywhere
            || (circuit.map(id -> any(components, id, Kind.CIRCUIT, belonging)).orElse(true)
                && storey.map(id -> any(components, id, Kind.STOREY, belonging)).orElse(true)));
  }

  private enum Kind {
    CIRCUIT,
    STOREY
  }

  private static boolean any(
      List<String> components, String wanted, Kind kind, Belonging belonging) {
    return components.stream()
        .map(
            id ->
                switch (kind) {
                  case CIRCUIT -> belonging.circuits(id);
                  case STOREY -> belonging.storeys(id);
                })
        .anyMatch(ids -> ids.contains(wanted));
  }
}
