package dryfloor.app.paper;

import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Bands;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Mends;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.Answer;
import dryfloor.app.report.ReadAgain;
import dryfloor.app.report.Wording;
import dryfloor.model.file.UncertainValue;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * What a report is asked for.
 *
 * @param sweep the analysis
 * @param wording in the reader's units
 * @param scale of severity
 * @param drawing which drawing it is
 * @param marks for the glass
 * @param mended failures for which changes that mend them were looked for
 * @param banded how bad and how good each failure can be, where that was worked out
 */
public record Question(
    SweepResult sweep,
    Wording wording,
    SeverityScale scale,
    Report.Drawing drawing,
    List<VesselMarks> marks,
    List<Mended> mended,
    Optional<Banded> banded) {

  public Question {
    marks = List.copyOf(marks);
    mended = List.copyOf(mended);
  }

  /** What is asked of the values as drawn. */
  public Question(
      SweepResult sweep,
      Wording wording,
      SeverityScale scale,
      Report.Drawing drawing,
      List<VesselMarks> marks,
      List<Mended> mended) {
    this(sweep, wording, scale, drawing, marks, mended, Optional.empty());
  }

  /** The same, with how bad and how good each failure can be, where that was worked out. */
  public Question with(Optional<Banded> bands) {
    return new Question(sweep, wording, scale, drawing, marks, mended, bands);
  }

  /**
   * How bad and how good each failure can be.
   *
   * @param values that are not known exactly
   */
  public record Banded(List<UncertainValue> values, BandResult bands) {

    /** Up to so many runs are no burden: some seconds. */
    private static final int FEW = 400;

    public Banded {
      values = List.copyOf(values);
    }

    /** Whether it takes so little that nobody need be asked first. */
    public static boolean isQuick(ReadAgain drawing, SweepResult sweep) {
      int values = drawing.values();
      return values > 0
          && values <= Bands.EVERY_CORNER_UP_TO
          && (long) Bands.points(values) * sweep.results().size() <= FEW;
    }

    /**
     * Works it out.
     *
     * @param threads to use; the answers do not depend on it
     * @throws BaselineProblem if the drawing spills or never settles when all is well
     * @throws CancellationException if {@code progress} ended it
     */
    public static Banded of(ReadAgain drawing, int threads, Progress progress)
        throws BaselineProblem {
      return new Banded(drawing.named(), Bands.of(drawing, Optional.empty(), threads, progress));
    }
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

    /**
     * Failures that wet a floor, at most so many: the power loss, which is asked about first, then
     * the worst.
     */
    public static List<Failure> worst(SweepResult sweep, int count) {
      return sweep.worstFirst().stream()
          .filter(result -> Answer.of(result) == Answer.WET)
          .map(FailureResult::failure)
          .sorted(Comparator.comparing(failure -> !(failure instanceof Failure.BuildingLosesPower)))
          .limit(count)
          .toList();
    }

    /** Looks for changes that mend a failure, which takes long. */
    public static Mended of(SweepResult sweep, Failure failure, int threads, Progress progress) {
      return new Mended(failure, Mends.of(sweep, failure, threads, progress));
    }
  }
}
