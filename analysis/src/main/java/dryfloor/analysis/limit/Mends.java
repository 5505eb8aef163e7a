package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.sweep.Team;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Finds single changes that mend a failure without harm elsewhere, the least first. */
public final class Mends {

  private final Today today;
  private final Failure failure;
  private final Choices choices;
  private final Proof proof;
  private final Progress progress;

  private Mends(Today today, Failure failure, Progress progress) {
    this.today = today;
    this.failure = failure;
    this.progress = progress;
    this.choices = new Choices(today.installation());
    this.proof = new Proof(today, failure, choices, progress::cancelled);
  }

  /**
   * Everything that mends a failure which wets a floor today, or has no answer: of each number the
   * value nearest to today's that does, and what may be added.
   *
   * @param today every failure of the drawing
   * @param threads to use; the answers do not depend on it
   * @param progress told of numbers and ladders of additions
   * @throws CancellationException if {@code progress} ended it
   */
  public static List<Remedy> of(
      SweepResult today, Failure failure, int threads, Progress progress) {
    return of(new Today(today, Bounds.DRY_FLOORS), failure, threads, progress);
  }

  /** The same for a failure that does today what none may do; where it does not, none. */
  static List<Remedy> of(Today today, Failure failure, int threads, Progress progress) {
    if (today.isRight(failure)) {
      return List.of();
    }
    Mends mends = new Mends(today, failure, progress);
    List<Supplier<Optional<Remedy>>> tasks = new ArrayList<>();
    mends.choices.all().forEach(property -> tasks.add(() -> mends.byMoving(property)));
    mends.ladders().forEach(ladder -> tasks.add(() -> mends.firstOf(ladder)));
    return share(tasks, threads, progress);
  }

  /**
   * What may be added against a failure, and what else was found to mend it.
   *
   * @param found changes that mend it already, whose costs are to be known
   * @param additions whether to look for them
   */
  static List<Remedy> withAdditions(
      Today today,
      Failure failure,
      List<SingleChange.Moved> found,
      boolean additions,
      int threads,
      Progress progress) {
    Mends mends = new Mends(today, failure, progress);
    List<Supplier<Optional<Remedy>>> tasks = new ArrayList<>();
    found.forEach(change -> tasks.add(() -> mends.firstOf(List.of(change))));
    if (additions) {
      mends.ladders().forEach(ladder -> tasks.add(() -> mends.firstOf(ladder)));
    }
    return share(tasks, threads, progress);
  }

  private static List<Remedy> share(
      List<Supplier<Optional<Remedy>>> tasks, int threads, Progress progress) {
    Map<Integer, Remedy> remedies = new ConcurrentHashMap<>();
    Team.share(
        tasks.size(),
        threads,
        progress,
        i -> unlessCancelled(tasks.get(i)).ifPresent(remedy -> remedies.put(i, remedy)));
    if (progress.cancelled()) {
      throw new CancellationException("the search for mends was cancelled");
    }
    return remedies.values().stream()
        .sorted(Comparator.comparing(Remedy::change, SingleChange.LEAST_FIRST))
        .toList();
  }

  /** A thread that is told to stop while it settles has nothing to tell. */
  private static Optional<Remedy> unlessCancelled(Supplier<Optional<Remedy>> task) {
    try {
      return task.get();
    } catch (CancellationException whileSettling) {
      return Optional.empty();
    }
  }

  private List<List<SingleChange>> ladders() {
    Optional<Outcome> outcome =
        today.results().results().stream()
            .filter(result -> result.failure().equals(failure))
            .filter(FailureResult.Answered.class::isInstance)
            .map(result -> ((FailureResult.Answered) result).outcome())
            .findFirst();
    return new Additions(today.installation(), today.normal()).against(outcome);
  }

  private Optional<Remedy> byMoving(Property property) {
    if (Limits.held(choices, property, today, progress::cancelled).isPresent()) {
      return Optional.empty();
    }
    return new NearestMend(choices, property, today, failure, proof, progress::cancelled)
        .find()
        .map(this::remedy);
  }

  private Optional<Remedy> firstOf(List<SingleChange> ladder) {
    return ladder.stream()
        .flatMap(change -> proof.of(change).stream())
        .findFirst()
        .map(this::remedy);
  }

  private Remedy remedy(Proven proven) {
    return new Remedy(
        failure, proven.change(), proven.with().installation(), Costs.of(proven, today));
  }
}
