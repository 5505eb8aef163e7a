package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.sweep.Team;
import dryfloor.analysis.together.MinimalSets.Happens;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds the smallest sets of failures that wet a floor, up to three at once.
 *
 * <p>A set of three is left out where one of the three has nothing to do with what the other two do
 * at once: it then adds what it does alone, or nothing. {@link Influences} and {@link Idle} say
 * when that is certain, of the two as they were simulated together.
 */
public final class CutSets {

  private static final int MOST = 3;

  private static final Comparator<CutSet> SMALLEST_THEN_WORST =
      Comparator.comparingInt((CutSet set) -> set.failures().size())
          .thenComparingDouble(set -> -set.outcome().reachedFloors());

  private final Inquiry inquiry;
  private final int threads;
  private final Progress progress;
  private final SweepResult sweep;
  private final List<Alone> failures;
  private final Map<Failure, Alone> alone;
  private final Joints joints;
  private final Map<List<Failure>, KeptOutcome> wet = new ConcurrentHashMap<>();
  private final List<CutSetResult.Open> unanswered =
      Collections.synchronizedList(new ArrayList<>());

  private Map<Pair, PairAnswer> pairs = Map.of();
  private int threes;
  private int simulated;

  private CutSets(Inquiry inquiry, int threads, Progress progress) {
    this.inquiry = inquiry;
    this.threads = threads;
    this.progress = progress;
    sweep = Sweep.everyFailure(inquiry, threads, progress);
    failures = Alone.of(inquiry, sweep);
    alone = failures.stream().collect(Collectors.toMap(Alone::failure, Function.identity()));
    joints = new Joints(inquiry, failures);
  }

  /**
   * Finds the minimal cut sets. Failures that the drawing switches off are in none.
   *
   * @param threads to use; the answers do not depend on it
   * @param progress told of failures first, then of pairs, then of sets of three to be simulated
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static CutSetResult of(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    return of(Inquiry.of(installation, progress::cancelled), threads, progress);
  }

  static CutSetResult of(Inquiry inquiry, int threads, Progress progress) {
    return new CutSets(inquiry, threads, progress).find();
  }

  private CutSetResult find() {
    List<PairAnswer> answers =
        Pairs.of(inquiry, failures, Scope.EVERY_TWO, threads, progress, joints::simulated);
    pairs = answers.stream().collect(Collectors.toMap(PairAnswer::pair, Function.identity()));
    List<Failure> events = failures.stream().map(Alone::failure).toList();
    List<CutSet> sets =
        MinimalSets.of(events, MOST, this::together).stream()
            .map(set -> new CutSet(set, kept(set)))
            .sorted(SMALLEST_THEN_WORST)
            .toList();
    return new CutSetResult(
        new PairResult(Scope.EVERY_TWO, sweep, answers),
        events.size(),
        sets,
        threes,
        simulated,
        unanswered);
  }

  /** What is told of sets that wet a floor. */
  private KeptOutcome kept(List<Failure> set) {
    return Optional.ofNullable(wet.get(set)).orElseThrow();
  }

  private List<Happens> together(List<List<Failure>> sets) {
    return switch (sets.stream().mapToInt(List::size).max().orElse(0)) {
      case 1 -> sets.stream().map(set -> one(set)).toList();
      case 2 -> sets.stream().map(set -> two(set)).toList();
      default -> threes(sets);
    };
  }

  private Happens one(List<Failure> set) {
    Optional<Outcome> outcome = alone(set.getFirst()).outcome();
    outcome.filter(o -> o.verdict() == Verdict.WET).ifPresent(o -> wet.put(set, KeptOutcome.of(o)));
    return outcome
        .map(o -> o.verdict() == Verdict.WET ? Happens.TOP_EVENT : Happens.NOTHING)
        .orElse(Happens.UNDECIDED);
  }

  private Happens two(List<Failure> set) {
    return switch (answer(new Pair(set.getFirst(), set.getLast()))) {
      case PairAnswer.Together together -> {
        if (together.outcome().verdict() == Verdict.WET) {
          wet.put(set, together.outcome());
          yield Happens.TOP_EVENT;
        }
        yield Happens.NOTHING;
      }
      case PairAnswer.AsOneAlone same -> Happens.NOTHING;
      case PairAnswer.Apart apart -> Happens.NOTHING;
      case PairAnswer.WetAlone impossible -> Happens.UNDECIDED;
      case PairAnswer.Excluded excluded -> Happens.UNDECIDED;
      case PairAnswer.Unanswered open -> Happens.UNDECIDED;
    };
  }

  private List<Happens> threes(List<List<Failure>> sets) {
    Happens[] happens = new Happens[sets.size()];
    Arrays.fill(happens, Happens.NOTHING);
    int[] open = IntStream.range(0, sets.size()).filter(i -> !isLeftOut(sets.get(i))).toArray();
    threes = sets.size();
    simulated = open.length;
    // A set that is never reached because of cancelling has no answer.
    for (int i : open) {
      happens[i] = Happens.UNDECIDED;
    }
    Team.share(open.length, threads, progress, i -> happens[open[i]] = simulate(sets.get(open[i])));
    return List.of(happens);
  }

  private boolean isLeftOut(List<Failure> three) {
    return IntStream.range(0, MOST)
        .anyMatch(
            i -> {
              List<Failure> two = new ArrayList<>(three);
              Failure third = two.remove(i);
              PairAnswer both = answer(new Pair(two.getFirst(), two.getLast()));
              return joints.of(both).leavesOut(alone(third));
            });
  }

  private Happens simulate(List<Failure> set) {
    return switch (inquiry.answerOnce(set)) {
      case FailureResult.Answered answered -> {
        if (answered.outcome().verdict() == Verdict.WET) {
          wet.put(set, KeptOutcome.of(answered.outcome()));
          yield Happens.TOP_EVENT;
        }
        yield Happens.NOTHING;
      }
      case FailureResult.Unanswered open -> {
        unanswered.add(new CutSetResult.Open(set, open.reason()));
        yield Happens.UNDECIDED;
      }
      case FailureResult.Skipped skipped -> Happens.UNDECIDED;
    };
  }

  private Alone alone(Failure failure) {
    return Optional.ofNullable(alone.get(failure)).orElseThrow();
  }

  private PairAnswer answer(Pair pair) {
    return Optional.ofNullable(pairs.get(pair)).orElseThrow();
  }
}
