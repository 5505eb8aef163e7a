package dryfloor.model.file;

import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Says in plain words why a text is no JSON. */
final class SyntaxProblem {

  private SyntaxProblem() {}

  static void report(JacksonException e, Problems problems) {
    TokenStreamLocation location = e.getLocation();
    FilePlace place =
        location == null
            ? FilePlace.WHOLE_FILE
            : new FilePlace(
                Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()), "");
    switch (e) {
      case StreamConstraintsException tooMuch -> {
        boolean nesting = e.getOriginalMessage().contains("nesting");
        problems.add(
            place,
            nesting
                ? "more than " + LocatedReader.DEEPEST_NESTING + " levels of nesting"
                : "a text or number far too long: " + firstSentence(e),
            nesting
                ? "an installation needs seven levels; look for brackets that are never closed"
                : "write names and quantities in full but short");
      }
      case UnexpectedEndOfInputException early ->
          problems.add(
              place,
              "the file ends too early: " + firstSentence(e),
              "close every {, [ and \"; the end of the file may be lost, look for its backup");
      default ->
          problems.add(
              place,
              "not valid JSON: " + firstSentence(e),
              "look just before this place for a missing comma, quote or bracket");
    }
  }

  private static String firstSentence(JacksonException e) {
    return e.getOriginalMessage().lines().findFirst().orElse("unreadable").strip();
  }
}
