package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** One value tried: the drawing with it, settled, and what is known about its failures so far. */
final class Trial {

  /** A level that rises no further than this (m) while it settles is one to run at. */
  private static final double STAYS = 0.01;

  private final Optional<Inquiry> inquiry;
  private final Optional<Decider> unsound;
  private final List<Failure> failures;
  private final Today today;

  /** What is wrong after each failure that was asked about; nothing where all is as it may be. */
  private final Map<Failure, Optional<Decider>> known = new HashMap<>();

  private Trial(
      Optional<Inquiry> inquiry, Optional<Decider> unsound, List<Failure> failures, Today today) {
    this.inquiry = inquiry;
    this.unsound = unsound;
    this.failures = failures;
    this.today = today;
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
      return new Trial(
          Optional.empty(), Optional.of(new Decider.NotDrawable(fault.get())), List.of(), today);
    }
    Installation drawing = choices.with(property, value);
    try {
      Inquiry inquiry = Inquiry.of(drawing, cancelled);
      return new Trial(
          Optional.of(inquiry),
          filledUpAgain(choices, property, value, today.normal(), inquiry.normal()),
          asked(drawing),
          today);
    } catch (BaselineProblem problem) {
      return new Trial(
          Optional.empty(),
          Optional.of(new Decider.NotSound(String.valueOf(problem.getMessage()))),
          List.of(),
          today);
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
  List<Failure> failures() {
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

  private Optional<Decider> wrong(Failure failure) {
    return inquiry.flatMap(all -> known.computeIfAbsent(failure, asked -> judge(all, asked)));
  }

  private Optional<Decider> judge(Inquiry all, Failure failure) {
    if (!failures.contains(failure)) {
      return Optional.empty();
    }
    return today.wrong(all.answerOnce(List.of(failure)), all.installation());
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
