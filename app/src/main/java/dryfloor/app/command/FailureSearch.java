package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.Installation;
import dryfloor.model.file.VisibleText;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the failure that a person means by an id, its beginning, or a part of id or name. */
final class FailureSearch {

  private static final int MOST_SUGGESTED = 12;
  private static final int PIECE = 3;
  private static final String LISTED = "'dryfloor list FILE' lists them all.";

  private final List<Failure> failures;
  private final Installation installation;

  FailureSearch(List<Failure> failures, Installation installation) {
    this.failures = failures;
    this.installation = installation;
  }

  /** What came of a search. */
  sealed interface Found {

    /** Exactly one. */
    record Meant(Failure failure) implements Found {}

    /** None or several, and a sentence that helps. */
    record Unclear(String complaint) implements Found {}
  }

  Found find(String text) {
    String wanted = text.toLowerCase(Locale.ROOT).strip();
    List<Failure> hits =
        matching(failure -> id(failure).equals(wanted) || name(failure).equals(wanted));
    if (hits.isEmpty()) {
      hits = matching(failure -> id(failure).startsWith(wanted + "."));
    }
    if (hits.size() != 1) {
      List<Failure> parts = matching(failure -> text(failure).contains(wanted));
      hits = hits.isEmpty() ? parts : hits;
    }
    String asked = VisibleText.of(text);
    return switch (hits.size()) {
      case 1 -> new Found.Meant(hits.getFirst());
      case 0 ->
          new Found.Unclear(
              failures.isEmpty()
                  ? "nothing in this drawing can fail"
                  : "no failure is called '" + asked + "'" + near(wanted));
      default -> new Found.Unclear("'" + asked + "' can mean any of\n" + list(hits));
    };
  }

  private List<Failure> matching(Predicate<Failure> condition) {
    return failures.stream().filter(condition).toList();
  }

  private static String id(Failure failure) {
    return FailureNames.id(failure).toLowerCase(Locale.ROOT);
  }

  private String name(Failure failure) {
    return FailureNames.name(failure, installation).toLowerCase(Locale.ROOT);
  }

  private String text(Failure failure) {
    return id(failure) + " " + name(failure);
  }

  /** The failures that share most pieces of three letters with the text, if any does. */
  private String near(String wanted) {
    List<Failure> near =
        failures.stream()
            .filter(failure -> shared(wanted, text(failure)) > 0)
            .sorted(Comparator.comparingLong((Failure f) -> shared(wanted, text(f))).reversed())
            .limit(MOST_SUGGESTED / 2)
            .toList();
    return near.isEmpty() ? "; " + LISTED : "; near it are\n" + list(near);
  }

  private static long shared(String wanted, String text) {
    return IntStream.rangeClosed(0, wanted.length() - PIECE)
        .filter(i -> text.contains(wanted.substring(i, i + PIECE)))
        .count();
  }

  private String list(List<Failure> some) {
    String listed =
        some.stream()
            .limit(MOST_SUGGESTED)
            .map(
                failure ->
                    "  "
                        + FailureNames.id(failure)
                        + "  ("
                        + FailureNames.name(failure, installation)
                        + ")")
            .collect(Collectors.joining("\n"));
    int more = some.size() - MOST_SUGGESTED;
    return listed + (more > 0 ? "\n  and " + more + " more" : "") + "\n" + LISTED;
  }
}
