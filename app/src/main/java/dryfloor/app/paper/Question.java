package dryfloor.app.paper;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Mends;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.Answer;
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
 * @param mended failures for which changes that mend them were looked for
 */
public record Question(
    SweepResult sweep,
    Wording wording,
    SeverityScale scale,
    Report.Drawing drawing,
    List<VesselMarks> marks,
    List<Mended> mended) {

  public Question {
    marks = List.copyOf(marks);
    mended = List.copyOf(mended);
  }

  /**
   * A failure for which single changes were looked for that mend it.
   *
   * @param remedies the least change first; empty where none was found
   */
  public record Mended(Failure failure, List<Remedy> remedies) {
    public Mended {
      remedies = List.copyOf(remedies);
    }

    /** The worst failures that wet a floor, at most so many. */
    public static List<Failure> worst(SweepResult sweep, int count) {
      return sweep.worstFirst().stream()
          .filter(result -> Answer.of(result) == Answer.WET)
          .map(FailureResult::failure)
          .limit(count)
          .toList();
    }

    /** Looks for changes that mend a failure, which takes long. */
    public static Mended of(SweepResult sweep, Failure failure, int threads, Progress progress) {
      return new Mended(failure, Mends.of(sweep, failure, threads, progress));
    }
  }
}
