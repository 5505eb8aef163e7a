package dryfloor.app.paper;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Cautions;
import dryfloor.app.report.ChangeWords;
import dryfloor.app.report.Wording;
import java.util.List;
import java.util.Locale;

/**
 * Two versions of a drawing as a page: words only, from which the forms are made.
 *
 * @param old the drawing as it was
 * @param present the drawing as it is now
 * @param summary how many end how
 * @param groups of failures that are told, none of them empty
 * @param gone names of failures that only the old drawing has
 * @param statement what all this is and is not
 */
public record Comparison(
    Report.Drawing old,
    Report.Drawing present,
    String summary,
    List<Group> groups,
    List<String> gone,
    String statement) {

  public Comparison {
    groups = List.copyOf(groups);
    gone = List.copyOf(gone);
  }

  /** Failures that changed alike. */
  public record Group(String heading, List<Row> rows) {
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One failure.
   *
   * @param kind of answer now, as a word in small letters that style sheets know
   * @param verdict now, and before where that was another
   */
  public record Row(String kind, String verdict, String failure, String water, String freeboard) {}

  /**
   * Puts changes into words.
   *
   * @param wording of the new drawing
   */
  public static Comparison of(
      Changes changes, Report.Drawing old, Report.Drawing present, Wording wording) {
    List<Group> groups =
        List.of(
            new Group("Worse", rows(changes.worse(), wording)),
            new Group("Better", rows(changes.better(), wording)),
            new Group("Only in the new drawing", added(changes.added(), wording)),
            new Group("The same", rows(changes.same(), wording)));
    return new Comparison(
        old,
        present,
        "%d worse, %d better, %d the same, %d only in the new drawing, %d only in the old one."
            .formatted(
                changes.worse().size(),
                changes.better().size(),
                changes.same().size(),
                changes.added().size(),
                changes.gone().size()),
        groups.stream().filter(group -> !group.rows().isEmpty()).toList(),
        changes.gone().stream().map(Changes.Gone::name).toList(),
        Cautions.STATEMENT);
  }

  private static List<Row> rows(List<Changes.Change> changes, Wording wording) {
    ChangeWords words = new ChangeWords(wording);
    return changes.stream()
        .map(
            change ->
                new Row(
                    kind(change.now()),
                    words.verdict(change),
                    words.failure(change),
                    words.water(change),
                    words.freeboard(change)))
        .toList();
  }

  private static List<Row> added(List<FailureResult> added, Wording wording) {
    return added.stream()
        .map(
            result ->
                new Row(
                    kind(result),
                    Answer.of(result).sign(true) + " " + Answer.of(result).word(),
                    FailureNames.name(result.failure(), wording.installation()),
                    "",
                    ""))
        .toList();
  }

  private static String kind(FailureResult result) {
    return Answer.of(result).name().toLowerCase(Locale.ROOT);
  }
}
