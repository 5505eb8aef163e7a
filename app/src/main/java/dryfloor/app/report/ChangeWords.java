package dryfloor.app.report;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;

/**
 * What became of one failure in another version of the drawing, for the cells of a table.
 *
 * @param wording of the new version
 */
public record ChangeWords(Wording wording) {

  /** Its name. */
  public String failure(Changes.Change change) {
    return FailureNames.name(change.now().failure(), wording.installation());
  }

  /** How much more water reaches floors: "+34 L". */
  public String water(Changes.Change change) {
    return change.moreWater().stream()
        .mapToObj(wording.amounts()::volumeChange)
        .findFirst()
        .orElse("");
  }

  /** How much more freeboard is left: "-12 mm". */
  public String freeboard(Changes.Change change) {
    return change.moreMargin().stream()
        .mapToObj(wording.amounts()::levelChange)
        .findFirst()
        .orElse("");
  }

  /** How it ends now, and how it ended before where that is something else. */
  public String verdict(Changes.Change change) {
    Answer now = Answer.of(change.now());
    String words = now.sign(true) + " " + now.word();
    return change.isTurned() ? Answer.of(change.before()).word() + " → " + words : words;
  }
}
