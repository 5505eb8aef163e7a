package dryfloor.app.paper;

import dryfloor.analysis.mark.Marks;
import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.Wording;
import java.util.List;

/**
 * What a report is asked for.
 *
 * @param sweep the analysis
 * @param wording in the reader's units
 * @param scale of severity
 * @param drawing which drawing it is
 * @param marks for the glass
 */
public record Question(
    SweepResult sweep,
    Wording wording,
    SeverityScale scale,
    Report.Drawing drawing,
    List<VesselMarks> marks) {

  public Question {
    marks = List.copyOf(marks);
  }

  /** A question whose marks are found in the analysis. */
  public static Question of(
      SweepResult sweep, Wording wording, SeverityScale scale, Report.Drawing drawing) {
    return new Question(sweep, wording, scale, drawing, Marks.of(sweep));
  }
}
