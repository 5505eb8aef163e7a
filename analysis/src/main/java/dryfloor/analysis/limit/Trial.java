package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One value tried: the drawing with it, settled, and what is known about its failures so far. */
final class Trial {

  /** A level that rises no further than this (m) while it settles is one to run at. */
  private static final double STAYS = 0.01;

  /** So many times as late as today a floor may be wet for it to be seen without a full run. */
  private static final double AFTER_TODAY = 1.5;

  /** And so much later (s). */
  private static final double MOMENT = 60;

  private final Optional<Inquiry> inquiry;
  private final Optional<Decider> unsound;
  private final Set<Failure> failures;
  private final Today today;

  private final Supplier<Predicate<Failure>> untouched;

  /** What is wrong after each failure that was asked about; nothing where all is as it may be. */
  private final Map<Failure, Optional<Decider>> known = new ConcurrentHashMap<>();

  private Trial(
      Optional<Inquiry> inquiry,
      Optional<Decider> unsound,
      List<Failure> failures,
      Today today,
      Supplier<Predicate<Failure>> untouched) {
    this.inquiry = inquiry;
    this.unsound = unsound;
    this.failures = new LinkedHashSet<>(failures);
    this.today = today;
    this.untouched = untouched;
  }

  private static Trial unsound(Decider why, Today today) {
    return new Trial(Optional.empty(), Optional.of(why), List.of(), today, () -> failure -> false);
  }

  /**
   * Tries a value.
   *
   * @param today normal operation with today's value, and what no failure may do
   */
  static Trial of(
      Choices choices, Property property, double value, Today today, BooleanSupplier cancelled) {
    Optional<String> fault = choices.fault(property, value);
    if (fault.isPresent()) {
      return unsound(new Decider.NotDrawable(fault.get()), today);
    }
    Installation drawing = choices.with(property, value);
    try {
      Inquiry inquiry = Inquiry.of(drawing, cancelled);
      return new Trial(
          Optional.of(inquiry),
          offDuty(today.normal(), inquiry.normal())
              .or(() -> filledUpAgain(choices, property, value, today.normal(), inquiry.normal())),
          asked(drawing),
          today,
          new Once<>(() -> today.untouched(inquiry, property)));
    } catch (BaselineProblem problem) {
      return unsound(new Decider.NotSound(String.valueOf(problem.getMessage())), today);
    }
  }

  /** A level below that of a float is no level to run at: the float fills it up again. */
  static Optional<Decider> filledUpAgain(
      Choices choices, Property property, double value, Outcome today, Outcome normal) {
    if (!(property instanceof Property.RunningLevel level)) {
      return Optional.empty();
    }
    double usual = settled(level, today) - choices.scale(property).today();
    double settled = settled(level, normal);
    return settled - value - usual > STAYS
        ? Optional.of(new Decider.FilledUpAgain(settled))
        : Optional.empty();
  }

  /**
   * The first pump that moves no water when all is well, though it does today, or the first
   * emergency drain that carries some, though it is dry today.
   */
  static Optional<Decider> offDuty(Outcome today, Outcome normal) {
    Set<String> before = offDuty(today).map(OffDuty::id).collect(Collectors.toSet());
    return offDuty(normal)
        .filter(part -> !before.contains(part.id()))
        .map(OffDuty::decider)
        .findFirst();
  }

  /** What does not do its duty when all is well, and how that is told. */
  private record OffDuty(String id, Decider decider) {}

  private static Stream<OffDuty> offDuty(Outcome normal) {
    Stream<OffDuty> pumps =
        normal.notes().stream()
            .filter(Note.IdlePump.class::isInstance)
            .map(Note.IdlePump.class::cast)
            .map(
                idle ->
                    new OffDuty(idle.pump(), new Decider.PumpIdle(idle.pump(), idle.sucksAir())));
    Stream<OffDuty> drains =
        normal.notes().stream()
            .filter(Note.EmergencyDrainRuns.class::isInstance)
            .map(Note.EmergencyDrainRuns.class::cast)
            .map(drain -> new OffDuty(drain.run(), new Decider.EmergencyDrainRuns(drain.run())));
    return Stream.concat(pumps, drains);
  }

  private static List<Failure> asked(Installation drawing) {
    Set<String> skipped =
        drawing.failureSettings().skipped().stream()
            .map(FailureSettings.Skipped::failure)
            .collect(Collectors.toSet());
    return FailureCatalogue.of(drawing).stream()
        .filter(failure -> !skipped.contains(FailureNames.id(failure)))
        .toList();
  }

  /** Why it can't be used at all, if so. */
  Optional<Decider> unsound() {
    return unsound;
  }

  /** Normal operation and more questions, where it is sound. */
  Optional<Inquiry> inquiry() {
    return inquiry;
  }

  /** Every failure that the drawing can have with this value. */
  Set<Failure> failures() {
    return failures;
  }

  /** The first of these failures that does what none may do, and what that is. */
  Optional<Decider> firstWrong(Collection<Failure> among) {
    return unsound.or(() -> among.stream().flatMap(failure -> wrong(failure).stream()).findFirst());
  }

  /** Those of these failures that do what none may do. */
  List<Failure> wrongOnes(Collection<Failure> among) {
    return among.stream().filter(failure -> wrong(failure).isPresent()).toList();
  }

  /** Those of these failures of which it is known by now that they do what none may do. */
  List<Failure> knownWrong(Collection<Failure> among) {
    return among.stream()
        .filter(failure -> known.getOrDefault(failure, Optional.empty()).isPresent())
        .toList();
  }

  /** Those of these failures that have to be run here to know what they do. */
  List<Failure> unknown(Collection<Failure> among) {
    return among.stream()
        .filter(failure -> !known.containsKey(failure))
        .filter(failures::contains)
        .filter(failure -> !staysRight(failure))
        .toList();
  }

  /** What this failure does that none may do; may be asked by several threads. */
  Optional<Decider> wrong(Failure failure) {
    Optional<Decider> before = known.get(failure);
    if (before != null) {
      return before;
    }
    Optional<Decider> found = inquiry.flatMap(all -> judge(all, failure));
    known.put(failure, found);
    return found;
  }

  private Optional<Decider> judge(Inquiry all, Failure failure) {
    if (!failures.contains(failure)) {
      return today.whereNotListed(failure);
    }
    if (staysRight(failure)) {
      return Optional.empty();
    }
    if (wetsAFloorBy(all, failure)) {
      return Optional.of(new Decider.FloorWet(failure));
    }
    return today.wrong(all.answerOnce(List.of(failure)), all.installation());
  }

  /**
   * Whether a failure that wets a floor today has done so here by some time after it does today. A
   * floor that got water has got it, whatever comes later, so nothing more need be run. Most
   * failures that wet a floor do so soon, and most changes mend none of them.
   */
  private boolean wetsAFloorBy(Inquiry all, Failure failure) {
    OptionalDouble first = today.firstWetFloor(failure);
    double by = AFTER_TODAY * first.orElse(0) + MOMENT;
    return first.isPresent()
        && by < all.installation().conditions().away()
        && all.answerBy(List.of(failure), by) instanceof FailureResult.Answered answered
        && answered.outcome().verdict() == Verdict.WET;
  }

  /** Whether it is right today and certainly has nothing to do with the change. */
  private boolean staysRight(Failure failure) {
    return today.isRight(failure) && untouched.get().test(failure);
  }

  /** Where the water of a vessel settles in normal operation (elevation, m). */
  static double settled(Property.RunningLevel level, Outcome normal) {
    return normal.vessels().stream()
        .filter(vessel -> vessel.id().equals(level.of()))
        .mapToDouble(Outcome.VesselOutcome::levelAfter)
        .findFirst()
        .orElseThrow();
  }
}
