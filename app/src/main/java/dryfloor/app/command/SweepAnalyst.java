package dryfloor.app.command;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.absence.Absences;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Bands;
import dryfloor.analysis.band.Sampling;
import dryfloor.analysis.band.Uncertain;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.limit.Bounds;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Limits;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.practice.Warnings;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.CutSets;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Pairs;
import dryfloor.analysis.together.Scope;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;

/** Asks the analysis. */
public final class SweepAnalyst implements Analyst {

  @Override
  public List<Failure> failures(Installation installation) {
    return FailureCatalogue.of(installation);
  }

  @Override
  public Outcome normal(Installation installation) throws BaselineProblem {
    return Sweep.everyFailure(
            installation, Runtime.getRuntime().availableProcessors(), Progress.NONE)
        .normal();
  }

  @Override
  public FailureResult answer(Installation installation, List<Failure> failures)
      throws BaselineProblem {
    return Sweep.together(installation, failures);
  }

  @Override
  public SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    return Sweep.everyFailure(installation, threads, progress);
  }

  @Override
  public PairResult pairs(Installation installation, Scope scope, int threads, Progress progress)
      throws BaselineProblem {
    return Pairs.of(installation, scope, threads, progress);
  }

  @Override
  public CutSetResult cutSets(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    return CutSets.of(installation, threads, progress);
  }

  @Override
  public LimitResult limits(
      Installation installation,
      List<Property> properties,
      Bounds bounds,
      int threads,
      Progress progress)
      throws BaselineProblem {
    return Limits.of(installation, properties, bounds, threads, progress);
  }

  @Override
  public LimitResult mends(
      Installation installation, Failure failure, Bounds bounds, int threads, Progress progress)
      throws BaselineProblem {
    return Limits.mends(installation, failure, bounds, threads, progress);
  }

  @Override
  public AbsenceResult absences(
      Installation installation, List<Double> times, int threads, Progress progress)
      throws BaselineProblem {
    return Absences.of(installation, times, threads, progress);
  }

  @Override
  public BandResult bands(
      Uncertain uncertain, Optional<Sampling> sampling, int threads, Progress progress)
      throws BaselineProblem {
    return Bands.of(uncertain, sampling, threads, progress);
  }

  @Override
  public List<Warning> warnings(Installation installation) throws BaselineProblem {
    return Warnings.of(installation);
  }
}
