package dryfloor.app.command;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Sampling;
import dryfloor.analysis.band.Uncertain;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Bounds;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Scope;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;

/** Whoever answers questions about an installation. */
public interface Analyst {

  /** Every failure that the drawing can have. */
  List<Failure> failures(Installation installation);

  /** Normal operation. */
  Outcome normal(Installation installation) throws BaselineProblem;

  /** One failure, or several at once. */
  FailureResult answer(Installation installation, List<Failure> failures) throws BaselineProblem;

  /** Every failure, on so many threads. */
  SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem;

  /** Failures two at a time, on so many threads. */
  PairResult pairs(Installation installation, Scope scope, int threads, Progress progress)
      throws BaselineProblem;

  /** The smallest sets of failures that wet a floor, on so many threads. */
  CutSetResult cutSets(Installation installation, int threads, Progress progress)
      throws BaselineProblem;

  /** How far these things can be changed within bounds, on so many threads. */
  LimitResult limits(
      Installation installation,
      List<Property> properties,
      Bounds bounds,
      int threads,
      Progress progress)
      throws BaselineProblem;

  /** What mends one failure and stays within bounds, on so many threads. */
  LimitResult mends(
      Installation installation, Failure failure, Bounds bounds, int threads, Progress progress)
      throws BaselineProblem;

  /** What becomes of a drawing that is left alone for these times (s), on so many threads. */
  AbsenceResult absences(
      Installation installation, List<Double> times, int threads, Progress progress)
      throws BaselineProblem;

  /**
   * How bad and how good it can be where not everything is known exactly, on so many threads.
   *
   * @param sampling points by chance, if any
   */
  BandResult bands(Uncertain uncertain, Optional<Sampling> sampling, int threads, Progress progress)
      throws BaselineProblem;

  /** What rules have against a drawing. */
  List<Warning> warnings(Installation installation) throws BaselineProblem;
}
