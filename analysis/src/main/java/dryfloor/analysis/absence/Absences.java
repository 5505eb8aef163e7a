package dryfloor.analysis.absence;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.HowBad;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Team;
import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Answers what becomes of an installation that is left alone for so long, after every single
 * failure at the beginning of the absence.
 *
 * <p>Each failure is run to the end of the longest absence. A floor that is not wet by the end of a
 * shorter one has got nothing by then, which needs no other run; what it has got is found by a run
 * of its own to that end, because what comes in cycles can't be read off in between. That nobody
 * comes back when expected is no failure here: how long nobody comes is the question.
 */
public final class Absences {

  private final Inquiry inquiry;
  private final List<Double> times;
  private final Guards guards;

  private Absences(Inquiry inquiry, List<Double> times) {
    this.inquiry = inquiry;
    this.times = times;
    this.guards = new Guards(inquiry.installation());
  }

  /**
   * Answers every failure that is not switched off.
   *
   * @param times lengths of absence (s), at least one, each above zero
   * @param threads to use; the answers do not depend on it
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static AbsenceResult of(
      Installation installation, List<Double> times, int threads, Progress progress)
      throws BaselineProblem {
    List<Double> sorted = times.stream().distinct().sorted().toList();
    Conditions drawn = installation.conditions();
    double longest = Math.max(drawn.away(), sorted.getLast());
    Installation leftAlone = installation.withConditions(new Conditions(drawn.celsius(), longest));
    Inquiry inquiry = Inquiry.of(leftAlone, progress::cancelled);
    return new Absences(inquiry, sorted).all(threads, progress);
  }

  private AbsenceResult all(int threads, Progress progress) {
    List<Failure> failures = asked();
    LeftAlone[] answers = new LeftAlone[failures.size()];
    progress.settled(inquiry.normal());
    Team.share(answers.length, threads, progress, i -> answers[i] = leftAlone(failures.get(i)));
    return new AbsenceResult(
        times,
        IntStream.range(0, answers.length)
            .mapToObj(
                i ->
                    Optional.ofNullable(answers[i])
                        .orElseGet(
                            () -> new LeftAlone.Unknown(failures.get(i), "it was cancelled")))
            .toList());
  }

  private List<Failure> asked() {
    Set<String> skipped =
        inquiry.installation().failureSettings().skipped().stream()
            .map(FailureSettings.Skipped::failure)
            .collect(Collectors.toSet());
    return FailureCatalogue.of(inquiry.installation()).stream()
        .filter(failure -> !(failure instanceof Failure.NobodyComesBack))
        .filter(failure -> !skipped.contains(FailureNames.id(failure)))
        .toList();
  }

  private LeftAlone leftAlone(Failure failure) {
    return switch (inquiry.answerBy(List.of(failure), times.getLast())) {
      case FailureResult.Answered answered -> leftAlone(failure, answered.outcome());
      case FailureResult.Unanswered open -> new LeftAlone.Unknown(failure, open.reason());
      case FailureResult.Skipped off -> new LeftAlone.Unknown(failure, off.reason());
    };
  }

  private LeftAlone leftAlone(Failure failure, Outcome longest) {
    List<Outcome> courses = new ArrayList<>();
    for (double time : times.subList(0, times.size() - 1)) {
      switch (by(time, failure, longest)) {
        case FailureResult.Answered answered -> courses.add(answered.outcome());
        case FailureResult.Unanswered open -> {
          return new LeftAlone.Unknown(failure, open.reason());
        }
        case FailureResult.Skipped off -> {
          return new LeftAlone.Unknown(failure, off.reason());
        }
      }
    }
    courses.add(longest);
    return new LeftAlone.Known(
        failure,
        IntStream.range(0, times.size())
            .mapToObj(i -> onFloors(courses.get(i), times.get(i)))
            .toList(),
        courses.stream().map(HowBad::of).toList(),
        firstWet(longest),
        guardsAtWork(failure, longest));
  }

  /** By the end of a shorter absence; the longest course where nothing is wet by then. */
  private FailureResult by(double time, Failure failure, Outcome longest) {
    OptionalDouble first = firstWet(longest);
    return first.isPresent() && first.getAsDouble() <= time
        ? inquiry.answerBy(List.of(failure), time)
        : new FailureResult.Answered(failure, longest);
  }

  private static double onFloors(Outcome outcome, double time) {
    OptionalDouble first = firstWet(outcome);
    return first.isPresent() && first.getAsDouble() <= time
        ? Math.max(outcome.reachedFloors(), outcome.beyond())
        : 0;
  }

  private static OptionalDouble firstWet(Outcome outcome) {
    return outcome.firstWetFloor();
  }

  private Optional<GuardsAtWork> guardsAtWork(Failure failure, Outcome with) {
    List<String> acted = guards.acted(with);
    if (acted.isEmpty()) {
      return Optional.empty();
    }
    // What is dead comes first: of two that hold one switch, the first counts.
    List<Failure> dead = new ArrayList<>(guards.allDead());
    dead.add(failure);
    return Optional.of(
        switch (inquiry.answerBy(dead, times.getLast())) {
          case FailureResult.Answered answered ->
              new GuardsAtWork.Compared(
                  acted,
                  onFloors(with, times.getLast()),
                  onFloors(answered.outcome(), times.getLast()),
                  firstWet(with),
                  firstWet(answered.outcome()));
          case FailureResult.Unanswered open -> new GuardsAtWork.NotKnown(acted, open.reason());
          case FailureResult.Skipped off -> new GuardsAtWork.NotKnown(acted, off.reason());
        });
  }
}
