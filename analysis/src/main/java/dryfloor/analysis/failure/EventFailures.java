package dryfloor.analysis.failure;

import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.check.Finding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Failures that events of sequences name. The list of failures is computed from the drawing, so
 * only here is it known whether there is such a failure; a sequence that names another is told by
 * {@link #check} and is in no list.
 */
public final class EventFailures {

  private final Map<String, Failure> known = new HashMap<>();

  private EventFailures(Installation installation) {
    FailureCatalogue.single(installation)
        .forEach(failure -> known.put(FailureNames.id(failure), failure));
  }

  /** What is wrong with the failures that events name, and what would be right. */
  static List<Finding> check(Installation installation) {
    FailureSettings settings = installation.failureSettings();
    if (settings.sequences().isEmpty()) {
      return List.of();
    }
    EventFailures failures = new EventFailures(installation);
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < settings.sequences().size(); i++) {
      List<Sequence.Event> events = settings.sequences().get(i).events();
      for (int j = 0; j < events.size(); j++) {
        if (events.get(j) instanceof Sequence.Event.Begins begins) {
          String field = "failures.sequences[" + i + "].events[" + j + "].begins";
          failures
              .complaint(begins.failure())
              .ifPresent(
                  complaint ->
                      findings.add(
                          new Finding(
                              Finding.Severity.ERROR,
                              "",
                              field,
                              complaint.message(),
                              complaint.remedy())));
        }
      }
    }
    return List.copyOf(findings);
  }

  /** The sequences of a drawing that can happen. */
  static Stream<Failure> sequences(Installation installation) {
    List<Sequence> all = installation.failureSettings().sequences();
    if (all.isEmpty()) {
      return Stream.empty();
    }
    EventFailures failures = new EventFailures(installation);
    return all.stream()
        .filter(failures::canHappen)
        .map(sequence -> new Failure.SequenceHappens(sequence.id()));
  }

  /**
   * The failure with this id that an event names.
   *
   * @throws IllegalArgumentException if the drawing can't have it
   */
  static Failure named(Installation installation, String id) {
    EventFailures failures = new EventFailures(installation);
    return Optional.ofNullable(failures.known.get(id))
        .filter(failure -> failures.complaint(id).isEmpty())
        .orElseThrow(() -> new IllegalArgumentException("no event can be '" + id + "'"));
  }

  private boolean canHappen(Sequence sequence) {
    return !sequence.events().isEmpty()
        && sequence.events().stream()
            .allMatch(
                event ->
                    switch (event) {
                      case Sequence.Event.Begins begins -> complaint(begins.failure()).isEmpty();
                      case Sequence.Event.Ends ends -> complaint(ends.failure()).isEmpty();
                      case Sequence.Event.Pours pours -> true;
                      case Sequence.Event.Takes takes -> true;
                    });
  }

  private record Complaint(String message, String remedy) {}

  private Optional<Complaint> complaint(String id) {
    Failure failure = known.get(id);
    if (failure == null) {
      return Optional.of(
          new Complaint(
              "no failure of this drawing is called '" + id + "'",
              "an id as 'dryfloor list' gives it" + alike(id)));
    }
    return failure instanceof Failure.NobodyComesBack
        ? Optional.of(
            new Complaint(
                "'" + id + "' is no event at a time",
                "a longer \"away\": a sequence is followed for that time after its last event"))
        : Optional.empty();
  }

  /** Failures of this drawing of the same kind or with the same component, if there are any. */
  static String alike(Installation installation, String id) {
    return new EventFailures(installation).alike(id);
  }

  private String alike(String id) {
    List<String> words = List.of(id.split("\\.", -1));
    List<String> alike =
        known.keySet().stream()
            .filter(other -> Stream.of(other.split("\\.", -1)).anyMatch(words::contains))
            .sorted()
            .limit(5)
            .toList();
    return alike.isEmpty() ? "" : ", such as " + String.join(", ", alike);
  }
}
