package dryfloor.app.command;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.absence.LeftAlone;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Sampling;
import dryfloor.analysis.band.Uncertain;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.limit.Bounds;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.together.CutSet;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Scope;
import dryfloor.app.report.Ink;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A workplace whose analyst gives prepared answers and whose output can be read. */
final class Desk implements Analyst {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Ink ink = Ink.PLAIN;
  private Map<String, String> environment = Map.of();
  private List<FailureResult> results =
      List.of(answered(new Failure.BuildingLosesPower(), SampleOutcome.dry()));
  private Optional<BaselineProblem> problem = Optional.empty();
  private Optional<RuntimeException> breakdown = Optional.empty();
  private boolean outOfMemory;
  private Writer target = out;
  private boolean piped;
  private List<Warning> warned = List.of();
  private double awayAsked;
  private List<LimitAnswer> limited = List.of();
  private List<Remedy> remedies = List.of();
  private final List<Property> propertiesAsked = new ArrayList<>();
  private List<LeftAlone> leftAlone = List.of();
  private final List<Double> absencesAsked = new ArrayList<>();
  private Optional<BandResult> bands = Optional.empty();
  private Optional<Sampling> samplingAsked = Optional.empty();
  private List<PairAnswer> paired = List.of();
  private Scope scopeAsked = Scope.EVERY_TWO;
  private List<CutSet> cutSets = List.of();
  private List<CutSetResult.Open> openSets = List.of();
  private final List<Optional<Path>> opened = new ArrayList<>();

  static FailureResult answered(Failure failure, Outcome outcome) {
    return new FailureResult.Answered(failure, outcome);
  }

  Desk answers(FailureResult... prepared) {
    results = List.of(prepared);
    return this;
  }

  Desk pairs(PairAnswer... prepared) {
    paired = List.of(prepared);
    return this;
  }

  Desk sets(CutSet... prepared) {
    cutSets = List.of(prepared);
    return this;
  }

  Desk openSets(CutSetResult.Open... prepared) {
    openSets = List.of(prepared);
    return this;
  }

  Desk limits(LimitAnswer... prepared) {
    limited = List.of(prepared);
    return this;
  }

  Desk mends(Remedy... prepared) {
    remedies = List.of(prepared);
    return this;
  }

  List<Property> propertiesAsked() {
    return propertiesAsked;
  }

  Desk warns(Warning... prepared) {
    warned = List.of(prepared);
    return this;
  }

  Desk leftAlone(LeftAlone... prepared) {
    leftAlone = List.of(prepared);
    return this;
  }

  Desk bands(BandResult prepared) {
    bands = Optional.of(prepared);
    return this;
  }

  Optional<Sampling> samplingAsked() {
    return samplingAsked;
  }

  List<Double> absencesAsked() {
    return absencesAsked;
  }

  Scope scopeAsked() {
    return scopeAsked;
  }

  Desk spillsWhenAllIsWell() {
    problem =
        Optional.of(
            new BaselineProblem(
                "the display spills; lower it", Optional.of(SampleOutcome.wet()), "display"));
    return this;
  }

  /** Files that were opened in a window; none for what was open last. */
  List<Optional<Path>> opened() {
    return opened;
  }

  Desk breaksDown() {
    breakdown = Optional.of(new IllegalStateException("the bend is bent"));
    return this;
  }

  Desk runsOutOfMemory() {
    outOfMemory = true;
    return this;
  }

  /** Whose output can't be written, and why. */
  Desk withOutput(Writer other, boolean isPiped) {
    target = other;
    piped = isPiped;
    return this;
  }

  Desk in(Ink other) {
    ink = other;
    return this;
  }

  Desk with(Map<String, String> other) {
    environment = other;
    return this;
  }

  int run(String... arguments) {
    Surface surface =
        new Surface(new Output(target, piped), new Output(err, false), ink, ink, false);
    return new CommandLines(
            new Workplace(InstallationFile::read, this, surface), opened::add, environment)
        .run(arguments);
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }

  double awayAsked() {
    return awayAsked;
  }

  @Override
  public List<Failure> failures(Installation installation) {
    return FailureCatalogue.of(installation);
  }

  @Override
  public Outcome normal(Installation installation) throws BaselineProblem {
    stumble(installation);
    return SampleOutcome.dry();
  }

  @Override
  public FailureResult answer(Installation installation, List<Failure> failures)
      throws BaselineProblem {
    stumble(installation);
    return results.getFirst();
  }

  @Override
  public SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    stumble(installation);
    progress.finished(1, results.size());
    return new SweepResult(installation, SampleOutcome.dry(), results);
  }

  @Override
  public PairResult pairs(Installation installation, Scope scope, int threads, Progress progress)
      throws BaselineProblem {
    stumble(installation);
    scopeAsked = scope;
    return new PairResult(
        scope, new SweepResult(installation, SampleOutcome.dry(), results), paired);
  }

  @Override
  public CutSetResult cutSets(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    PairResult pairs = pairs(installation, Scope.EVERY_TWO, threads, progress);
    return new CutSetResult(pairs, results.size(), cutSets, 9, 5, openSets);
  }

  @Override
  public LimitResult limits(
      Installation installation,
      List<Property> properties,
      Bounds bounds,
      int threads,
      Progress progress)
      throws BaselineProblem {
    stumble(installation);
    propertiesAsked.addAll(properties);
    return new LimitResult(
        new SweepResult(installation, SampleOutcome.dry(), results), bounds, limited, remedies);
  }

  @Override
  public LimitResult mends(
      Installation installation, Failure failure, Bounds bounds, int threads, Progress progress)
      throws BaselineProblem {
    stumble(installation);
    return new LimitResult(
        new SweepResult(installation, SampleOutcome.dry(), results),
        bounds,
        List.of(),
        remedies.stream().filter(remedy -> remedy.failure().equals(failure)).toList());
  }

  @Override
  public AbsenceResult absences(
      Installation installation, List<Double> times, int threads, Progress progress)
      throws BaselineProblem {
    stumble(installation);
    absencesAsked.addAll(times);
    return new AbsenceResult(times, leftAlone);
  }

  @Override
  public BandResult bands(
      Uncertain uncertain, Optional<Sampling> sampling, int threads, Progress progress)
      throws BaselineProblem {
    samplingAsked = sampling;
    try {
      stumble(uncertain.at(new Point(Collections.nCopies(uncertain.values(), 1.0))));
    } catch (Uncertain.NotDrawable fault) {
      throw new IllegalStateException(fault);
    }
    return bands.orElseThrow();
  }

  @Override
  public List<Warning> warnings(Installation installation) throws BaselineProblem {
    stumble(installation);
    return warned;
  }

  private void stumble(Installation installation) throws BaselineProblem {
    awayAsked = installation.conditions().away();
    if (outOfMemory) {
      throw new OutOfMemoryError("Java heap space");
    }
    if (breakdown.isPresent()) {
      throw breakdown.get();
    }
    if (problem.isPresent()) {
      throw problem.get();
    }
  }
}
