package dryfloor.analysis.sweep;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
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
import java.util.function.BooleanSupplier;

/**
 * An installation in normal operation, ready to be asked what happens when things fail. Normal
 * operation is settled once; every question starts from there. May be asked from several threads.
 */
public final class Inquiry {

  /** A level that settles further than this from where it was declared is worth telling (m). */
  private static final double WORTH_TELLING = 2e-3;

  private final Installation installation;
  private final BooleanSupplier cancelled;
  private final Accuracy accuracy;
  private final Course normal;

  /** Answers by what a failure changes: some failures change the very same things. */
  private final Map<List<Effect>, FailureResult> answered = new ConcurrentHashMap<>();

  private Inquiry(Installation installation, BooleanSupplier cancelled, Accuracy accuracy)
      throws BaselineProblem {
    this.installation = installation;
    this.cancelled = cancelled;
    this.accuracy = accuracy;
    this.normal = settle();
  }

  /**
   * Lets an installation settle.
   *
   * @param cancelled asked often, by every question too; what is asked later has no answer
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if it was cancelled before normal operation had settled
   */
  public static Inquiry of(Installation installation, BooleanSupplier cancelled)
      throws BaselineProblem {
    return new Inquiry(installation, cancelled, Accuracy.USUAL);
  }

  /** What is asked about. */
  public Installation installation() {
    return installation;
  }

  /** Normal operation, from the declared levels to the steady state. */
  public Outcome normal() {
    List<Note> notes = new ArrayList<>();
    Outcome outcome = OutcomeBuilder.of(normal, List.of());
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      double declared = declaredLevel(vessel.id());
      if (Math.abs(vessel.levelAfter() - declared) > WORTH_TELLING) {
        notes.add(new Note.SettlesElsewhere(vessel.id(), declared, vessel.levelAfter()));
      }
    }
    notes.addAll(OffDuty.of(installation, outcome));
    return OutcomeBuilder.of(normal, notes);
  }

  private double declaredLevel(String vessel) {
    return installation.vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .mapToDouble(Vessel::level)
        .findFirst()
        .orElseThrow();
  }

  /**
   * What goes on when nothing fails, from the steady state to the end of the unattended time: what
   * failures are held against to see what they change. Empty where it comes to no answer.
   */
  public Optional<Outcome> undisturbed() {
    try {
      return Optional.of(OutcomeBuilder.of(run(List.of()), List.of()));
    } catch (NoAnswer noAnswer) {
      return Optional.empty();
    }
  }

  private Course settle() throws BaselineProblem {
    Course course;
    try {
      course =
          Simulation.ofNormalOperation(
              FlowNetwork.of(installation, List.of()), accuracy, cancelled);
    } catch (NoAnswer noAnswer) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("the sweep was cancelled");
      }
      throw new BaselineProblem(
          "the installation never settles when all is well: " + noAnswer.reason(),
          Optional.empty(),
          "");
    }
    Outcome outcome = OutcomeBuilder.of(course, List.of());
    if (outcome.verdict() != Verdict.DRY) {
      throw new BaselineProblem(
          "the installation spills when all is well; its drawing must be mended first",
          Optional.of(outcome),
          spillsFirst(outcome));
    }
    if (course.ending() instanceof Ending.StillMoving moving) {
      throw new BaselineProblem(
          "the installation does not settle when all is well: the level of '"
              + moving.place()
              + "' still moves at the end of the unattended time",
          Optional.of(outcome),
          moving.place());
    }
    return course;
  }

  private static String spillsFirst(Outcome outcome) {
    return outcome.story().stream()
        .filter(event -> event.what() == StoryEvent.What.SPILLS)
        .map(StoryEvent::subject)
        .findFirst()
        .orElse("");
  }

  /** The answer to one failure, unless the drawing switches it off. */
  public FailureResult answerUnlessSkipped(Failure failure) {
    return installation.failureSettings().skipped().stream()
        .filter(skipped -> skipped.failure().equals(FailureNames.id(failure)))
        .map(FailureSettings.Skipped::reason)
        .findFirst()
        .<FailureResult>map(reason -> new FailureResult.Skipped(failure, reason))
        .orElseGet(() -> answer(List.of(failure)));
  }

  /**
   * The answer to some failures at once, as one event: a hidden failure and its trigger, say. It is
   * kept, so that asking the same again costs nothing.
   */
  public FailureResult answer(List<Failure> failures) {
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

  /** As {@link #answer}, but not kept: for questions by the thousand, of which few are repeated. */
  public FailureResult answerOnce(List<Failure> failures) {
    return answer(failures, FailureResolver.resolve(installation, failures));
  }

  /**
   * As {@link #answerOnce}, but up to a time after the beginning (s), whatever the unattended time
   * and however long after the last event of a sequence that would be.
   */
  public FailureResult answerBy(List<Failure> failures, double time) {
    List<Effect> effects = new ArrayList<>(FailureResolver.resolve(installation, failures));
    effects.removeIf(
        effect -> effect instanceof Effect.AwayFrom || effect instanceof Effect.AwayTimes);
    effects.add(new Effect.AwayTimes(time / installation.conditions().away()));
    return answer(failures, effects);
  }

  /** One course of what the physics leaves open, and what was open in it. */
  private record Tried(
      FailureResult result, List<String> holes, List<String> primings, List<String> drips) {}

  /**
   * Where a siphon break that mattered may be too small to work, or nobody knows whether a run
   * fills or drips, runs both branches and tells the worse.
   */
  private FailureResult answer(List<Failure> failures, List<Effect> effects) {
    Failure first = failures.getFirst();
    Tried working = tried(first, effects, List.of());
    FailureResult worst =
        worseOfDrips(first, effects, working, worseOfPrimings(first, effects, List.of(), working));
    if (working.holes().isEmpty()) {
      return worst;
    }
    List<Effect> held = new ArrayList<>(effects);
    working.holes().forEach(hole -> held.add(new Effect.SiphonBreakHeldShut(hole)));
    List<Note> blocked = doubtNotes(working.holes(), false);
    FailureResult shut = worseOfPrimings(first, held, blocked, tried(first, held, blocked));
    return worse(shut, worst);
  }

  /**
   * The same with what may fill filled, where that was open and makes a difference. Where it makes
   * none, nothing is told of it.
   */
  private FailureResult worseOfPrimings(
      Failure first, List<Effect> effects, List<Note> notes, Tried late) {
    if (late.primings().isEmpty()) {
      return late.result();
    }
    List<Effect> filled = new ArrayList<>(effects);
    late.primings().forEach(run -> filled.add(new Effect.PrimesEarly(run)));
    FailureResult early = tried(first, filled, notes).result();
    return WorstFirst.isSame(early, late.result())
        ? late.result()
        : worse(
            noting(early, primingNotes(late.primings(), true)),
            noting(late.result(), primingNotes(late.primings(), false)));
  }

  /** The same with drains that leak never full at their holes, where that makes a difference. */
  private FailureResult worseOfDrips(
      Failure first, List<Effect> effects, Tried full, FailureResult told) {
    if (full.drips().isEmpty()) {
      return told;
    }
    List<Effect> open = new ArrayList<>(effects);
    full.drips().forEach(run -> open.add(new Effect.RunsPartlyFull(run)));
    FailureResult dripping = tried(first, open, List.of()).result();
    return WorstFirst.isSame(dripping, told)
        ? told
        : worse(
            noting(dripping, dripNotes(full.drips(), true)),
            noting(told, dripNotes(full.drips(), false)));
  }

  private static List<Note> dripNotes(List<String> runs, boolean drips) {
    return runs.stream().<Note>map(run -> new Note.DripInDoubt(run, drips)).toList();
  }

  private static List<Note> primingNotes(List<String> runs, boolean filled) {
    return runs.stream().<Note>map(run -> new Note.PrimingInDoubt(run, filled)).toList();
  }

  private static FailureResult noting(FailureResult result, List<Note> more) {
    return switch (result) {
      case FailureResult.Answered answered ->
          new FailureResult.Answered(answered.failure(), answered.outcome().with(more));
      case FailureResult.Unanswered unanswered -> unanswered;
      case FailureResult.Skipped skipped -> skipped;
    };
  }

  private static FailureResult worse(FailureResult other, FailureResult usual) {
    return WorstFirst.COURSES.compare(other, usual) < 0 ? other : usual;
  }

  private Tried tried(Failure first, List<Effect> effects, List<Note> known) {
    try {
      Course course = run(effects);
      List<String> holes =
          doubtfulSiphonBreaks(effects).stream().filter(course::everOpened).toList();
      List<String> primings = doubtfulPrimings(course, effects);
      List<Note> notes = new ArrayList<>(known);
      notes.addAll(doubtNotes(holes, true));
      return new Tried(
          answered(first, course, notes),
          holes,
          primings,
          course.doubtfulDrips().stream().sorted().toList());
    } catch (NoAnswer noAnswer) {
      return new Tried(
          new FailureResult.Unanswered(first, noAnswer.reason()),
          doubtfulSiphonBreaks(effects),
          List.of(),
          List.of());
    }
  }

  private static List<String> doubtfulPrimings(Course course, List<Effect> effects) {
    return course.doubtfulPrimings().stream()
        .filter(run -> !effects.contains(new Effect.PrimesEarly(run)))
        .sorted()
        .toList();
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
    return Simulation.ofFailure(normal, FlowNetwork.of(installation, effects), accuracy, cancelled);
  }

  private static FailureResult answered(Failure failure, Course course, List<Note> notes) {
    return new FailureResult.Answered(failure, OutcomeBuilder.of(course, notes));
  }
}
