package dryfloor.model.file;

import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;

/** Says in plain words why a text is no JSON. The parser only knows that it is none. */
final class SyntaxProblem {

  private SyntaxProblem() {}

  static void report(JacksonException e, String text, Problems problems) {
    SyntaxSearch.firstFault(text)
        .ifPresentOrElse(
            fault -> problems.add(fault.placeIn(text), fault.what(), fault.remedy()),
            () ->
                problems.add(
                    placeOf(e),
                    "not valid JSON near this place",
                    "look just before it for a missing comma, quote or bracket"));
  }

  private static FilePlace placeOf(JacksonException e) {
    TokenStreamLocation location = e.getLocation();
    return location == null
        ? FilePlace.WHOLE_FILE
        : new FilePlace(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()), "");
  }
}
