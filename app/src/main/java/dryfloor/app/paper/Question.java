package dryfloor.app.paper;

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
}
