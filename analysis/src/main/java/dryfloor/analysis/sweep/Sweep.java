package dryfloor.analysis.sweep;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.NoAnswer;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Answers failures of one installation. */
public final class Sweep {

  /** A level that settles further than this from where it was declared is worth telling (m). */
  private static final double WORTH_TELLING = 2e-3;

  private final Installation installation;
  private final Progress progress;
  private final Accuracy accuracy;
  private final Course normal;

  /** Answers by what a failure changes: some failures change the very same things. */
  private final Map<List<Effect>, FailureResult> answered = new ConcurrentHashMap<>();

  private Sweep(Installation installation, Progress progress, Accuracy accuracy)
      throws BaselineProblem {
    this.installation = installation;
    this.progress = progress;
    this.accuracy = accuracy;
    this.normal = settle();
  }

  /**
   * Answers every single failure that the drawing can have.
   *
   * @param threads to use; the answers do not depend on it
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    Sweep sweep = new Sweep(installation, progress, Accuracy.USUAL);
    Outcome normal = sweep.normalOutcome();
    progress.settled(normal);
    return new SweepResult(installation, normal, sweep.all(threads));
  }

  /**
   * Answers some failures at once, as one event: a hidden failure and its trigger, say.
   *
   * @throws BaselineProblem if the installation spills or never settles when all is well
   */
  public static FailureResult together(Installation installation, List<Failure> failures)
      throws BaselineProblem {
    return new Sweep(installation, Progress.NONE, Accuracy.USUAL).answer(failures);
  }

  private Outcome normalOutcome() {
    List<Note> notes = new ArrayList<>();
    Outcome outcome = OutcomeBuilder.of(normal, List.of());
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      double declared = declaredLevel(vessel.id());
      if (Math.abs(vessel.levelAfter() - declared) > WORTH_TELLING) {
        notes.add(new Note.SettlesElsewhere(vessel.id(), declared, vessel.levelAfter()));
      }
    }
    notes.addAll(IdlePumps.of(installation, outcome));
    return OutcomeBuilder.of(normal, notes);
  }

  private double declaredLevel(String vessel) {
    return installation.vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .mapToDouble(Vessel::level)
        .findFirst()
        .orElseThrow();
  }

  // Normal operation.

  private Course settle() throws BaselineProblem {
    Course course;
    try {
      course =
          Simulation.ofNormalOperation(
              FlowNetwork.of(installation, List.of()), accuracy, progress::cancelled);
    } catch (NoAnswer noAnswer) {
      if (progress.cancelled()) {
        throw new CancellationException("the sweep was cancelled");
      }
      throw new BaselineProblem(
          "the installation never settles when all is well: " + noAnswer.reason(),
          Optional.empty());
    }
    Outcome outcome = OutcomeBuilder.of(course, List.of());
    if (outcome.verdict() != Verdict.DRY) {
      throw new BaselineProblem(
          "the installation spills when all is well; its drawing must be mended first",
          Optional.of(outcome));
    }
    if (course.ending() instanceof Ending.StillMoving moving) {
      throw new BaselineProblem(
          "the installation does not settle when all is well: the level of '"
              + moving.place()
              + "' still moves at the end of the unattended time",
          Optional.of(outcome));
    }
    return course;
  }

  // Failures.

  private List<FailureResult> all(int threads) {
    List<Failure> failures = FailureCatalogue.of(installation);
    FailureResult[] results = new FailureResult[failures.size()];
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    Runnable work =
        () -> {
          for (int i = next.getAndIncrement();
              i < results.length && !progress.cancelled();
              i = next.getAndIncrement()) {
            results[i] = answerUnlessSkipped(failures.get(i));
            progress.answered(results[i]);
            progress.finished(done.incrementAndGet(), results.length);
          }
        };
    List<Thread> others =
        IntStream.range(1, Math.min(threads, results.length))
            .mapToObj(i -> Thread.ofPlatform().daemon().name("sweep-" + i).start(work))
            .toList();
    work.run();
    for (Thread other : others) {
      join(other);
    }
    return IntStream.range(0, results.length)
        .mapToObj(
            i ->
                Optional.ofNullable(results[i])
                    .orElseGet(
                        () -> new FailureResult.Unanswered(failures.get(i), "it was cancelled")))
        .toList();
  }

  private static void join(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new NoAnswer("it was interrupted");
    }
  }

  private FailureResult answerUnlessSkipped(Failure failure) {
    return installation.failureSettings().skipped().stream()
        .filter(skipped -> skipped.failure().equals(FailureNames.id(failure)))
        .map(FailureSettings.Skipped::reason)
        .findFirst()
        .<FailureResult>map(reason -> new FailureResult.Skipped(failure, reason))
        .orElseGet(() -> answer(List.of(failure)));
  }

  /** Answers failures that were not answered before. */
  private FailureResult answer(List<Failure> failures) {
    List<Effect> effects = FailureResolver.resolve(installation, failures);
    FailureResult result = known(effects).orElseGet(() -> answer(failures, effects));
    answered.putIfAbsent(effects, result);
    return switch (result) {
      case FailureResult.Answered same ->
          new FailureResult.Answered(failures.getFirst(), same.outcome());
      case FailureResult.Unanswered same ->
          new FailureResult.Unanswered(failures.getFirst(), same.reason());
      case FailureResult.Skipped same -> same;
    };
  }

  private Optional<FailureResult> known(List<Effect> effects) {
    return Optional.ofNullable(answered.get(effects));
  }

  /**
   * Where a siphon break that mattered may be too small to work, runs both branches and tells the
   * worse.
   */
  private FailureResult answer(List<Failure> failures, List<Effect> effects) {
    Failure first = failures.getFirst();
    List<String> doubtful;
    FailureResult working;
    try {
      Course course = run(effects);
      doubtful = doubtfulSiphonBreaks(effects).stream().filter(course::everOpened).toList();
      working = answered(first, course, doubtNotes(doubtful, true));
    } catch (NoAnswer noAnswer) {
      doubtful = doubtfulSiphonBreaks(effects);
      working = new FailureResult.Unanswered(first, noAnswer.reason());
    }
    if (doubtful.isEmpty()) {
      return working;
    }
    FailureResult blocked = withHeldShut(first, effects, doubtful);
    return WorstFirst.COURSES.compare(blocked, working) < 0 ? blocked : working;
  }

  private FailureResult withHeldShut(Failure first, List<Effect> effects, List<String> doubtful) {
    List<Effect> held = new ArrayList<>(effects);
    doubtful.forEach(hole -> held.add(new Effect.SiphonBreakHeldShut(hole)));
    try {
      return answered(first, run(held), doubtNotes(doubtful, false));
    } catch (NoAnswer noAnswer) {
      return new FailureResult.Unanswered(first, noAnswer.reason());
    }
  }

  private List<String> doubtfulSiphonBreaks(List<Effect> effects) {
    List<String> doubtful = new ArrayList<>();
    for (Run run : installation.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.SiphonBreak hole
            && Siphon.breakHole(areaOf(hole), run.boreArea()) == Siphon.BreakHole.IN_DOUBT
            && !effects.contains(new Effect.SiphonBreakHeldShut(hole.id()))) {
          doubtful.add(hole.id());
        }
      }
    }
    return doubtful;
  }

  private static double areaOf(Part.SiphonBreak hole) {
    return hole.count() * Math.PI / 4 * hole.diameter() * hole.diameter();
  }

  private static List<Note> doubtNotes(List<String> doubtful, boolean worked) {
    return doubtful.stream().<Note>map(hole -> new Note.SiphonBreakInDoubt(hole, worked)).toList();
  }

  private Course run(List<Effect> effects) {
    return Simulation.ofFailure(
        normal, FlowNetwork.of(installation, effects), accuracy, progress::cancelled);
  }

  private static FailureResult answered(Failure failure, Course course, List<Note> notes) {
    return new FailureResult.Answered(failure, OutcomeBuilder.of(course, notes));
  }
}
