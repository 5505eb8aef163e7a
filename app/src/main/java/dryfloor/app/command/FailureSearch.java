package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds the failure that a person means by an id or a part of it. */
final class FailureSearch {

  private static final int MOST_SUGGESTED = 12;

  private FailureSearch() {}

  /** What came of a search. */
  sealed interface Found {
    record Meant(Failure failure) implements Found {}

    record Unclear(String complaint) implements Found {}
  }

  static Found find(String text, List<Failure> failures, Installation installation) {
    List<Failure> exact =
        failures.stream().filter(failure -> FailureNames.id(failure).equals(text)).toList();
    String wanted = text.toLowerCase(Locale.ROOT);
    List<Failure> part =
        failures.stream()
            .filter(
                failure ->
                    FailureNames.id(failure).contains(wanted)
                        || FailureNames.name(failure, installation)
                            .toLowerCase(Locale.ROOT)
                            .contains(wanted))
            .toList();
    List<Failure> hits = exact.size() == 1 ? exact : part;
    return switch (hits.size()) {
      case 1 -> new Found.Meant(hits.getFirst());
      case 0 ->
          new Found.Unclear("no failure is called '" + text + "'; there are\n" + list(failures));
      default -> new Found.Unclear("'" + text + "' can mean any of\n" + list(hits));
    };
  }

  private static String list(List<Failure> failures) {
    String some =
        failures.stream()
            .limit(MOST_SUGGESTED)
            .map(failure -> "  " + FailureNames.id(failure))
            .collect(Collectors.joining("\n"));
    int more = failures.size() - MOST_SUGGESTED;
    return some + (more > 0 ? "\n  and " + more + " more: 'dryfloor check' lists them all" : "");
  }
}
