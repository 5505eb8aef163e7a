package dryfloor.model.file;

import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;

/** Says in plain words why a text is no JSON. */
final class SyntaxProblem {

  private SyntaxProblem() {}

  static void report(JacksonException e, String text, Problems problems) {
    switch (e) {
      case StreamConstraintsException tooMuch -> reportSize(tooMuch, problems);
      default -> reportFault(e, text, problems);
    }
  }

  private static void reportSize(StreamConstraintsException tooMuch, Problems problems) {
    boolean nesting = tooMuch.getOriginalMessage().contains("nesting");
    problems.add(
        placeOf(tooMuch),
        nesting
            ? "more than " + LocatedReader.DEEPEST_NESTING + " levels of nesting"
            : "a text or number far too long",
        nesting
            ? "an installation needs seven levels; look for brackets that are never closed"
            : "at most "
                + LocatedReader.LONGEST_TEXT
                + " characters for a text, 1000 digits for a number; look for a quote that is never closed");
  }

  /** The parser knows that there is a fault; what it is, the search says better. */
  private static void reportFault(JacksonException e, String text, Problems problems) {
    Optional<SyntaxFault> fault = SyntaxSearch.firstFault(text);
    if (fault.isPresent()) {
      problems.add(
          fault.get().placeIn(text), "not valid JSON: " + fault.get().what(), fault.get().remedy());
    } else {
      problems.add(
          placeOf(e),
          "not valid JSON near this place",
          "look just before it for a missing comma, quote or bracket");
    }
  }

  private static FilePlace placeOf(JacksonException e) {
    TokenStreamLocation location = e.getLocation();
    return location == null
        ? FilePlace.WHOLE_FILE
        : new FilePlace(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()), "");
  }
}
