package dryfloor.app.paper;

import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.app.report.Cautions;

/** Puts one analysis into the words and pictures of a report. */
public final class ReportWords {

  private ReportWords() {}

  /** The whole report. */
  public static Report of(Question question) {
    return new Report(
        question.drawing(),
        OwnerWords.of(question),
        WorksheetWords.of(question),
        EmergencyWords.of(question),
        MarkWords.of(question),
        question.wording().amounts().level(Rehearsal.TOLERANCE),
        RehearsalWords.of(question),
        CourseWords.of(question),
        DoubtWords.of(question),
        new Cautions(question.wording()).all(),
        Cautions.STATEMENT);
  }
}
