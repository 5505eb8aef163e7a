package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the safe ranges of one property: looks at values all over its scale with the failures that
 * are likely to decide, halves the steps between a safe value and one that is not until they are
 * neighbours, then tries the ends and the middle of every range with all failures. A failure that
 * only then turns out to matter is looked at everywhere, and the search begins again with it.
 *
 * <p>A range or a gap that lies wholly between two neighbouring values of the first look is not
 * seen.
 */
final class LimitSearch {

  /** Parts into which the scale is divided at first. */
  private static final int PARTS = 16;

  /** Failures that come closest to a rim today are likely to decide. */
  private static final int CLOSEST = 6;

  private final Choices choices;
  private final Property property;
  private final Scale scale;
  private final Today today;
  private final BooleanSupplier cancelled;
  private final Map<Integer, Trial> trials = new TreeMap<>();

  LimitSearch(Choices choices, Property property, Today today, BooleanSupplier cancelled) {
    this.choices = choices;
    this.property = property;
    this.scale = choices.scale(property);
    this.today = today;
    this.cancelled = cancelled;
  }

  LimitAnswer search() {
    Set<Failure> wrong = new LinkedHashSet<>(today.wrong().toList());
    Set<Failure> deciding = new LinkedHashSet<>(likely());
    NavigableSet<Integer> looked = firstLook();
    while (true) {
      List<SafeRange> holds = ranges(looked, deciding);
      List<Mend> mends = mends(looked, deciding, wrong);
      Set<Failure> more = unforeseen(holds, mends);
      if (!deciding.addAll(more)) {
        return new LimitAnswer.Found(property, scale, holds, mends, mark(holds));
      }
    }
  }

  /** Where the water settles when a vessel is filled as high as it may be. */
  private OptionalDouble mark(List<SafeRange> holds) {
    if (!(property instanceof Property.RunningLevel level)) {
      return OptionalDouble.empty();
    }
    return scale.todayIn(holds).stream()
        .flatMap(range -> at(step(range.to())).inquiry().stream())
        .mapToDouble(inquiry -> Trial.settled(level, inquiry.normal()))
        .findFirst();
  }

  /**
   * The upper end of today's range alone, for less work: how high it may be if only these failures
   * could happen.
   *
   * @return nothing where today's value does not hold
   */
  Optional<Trial> highest(Set<Failure> asked) {
    Optional<Integer> good = Optional.empty();
    for (int step : firstLook().tailSet(scale.below(), true)) {
      if (isSafe(step, asked)) {
        good = Optional.of(step);
      } else if (good.isPresent()) {
        return Optional.of(at(lastSafe(good.get(), step, asked)));
      } else if (step >= scale.above()) {
        return Optional.empty();
      }
    }
    return good.map(this::at);
  }

  /** Whether no higher value is looked at. */
  boolean isMost(Trial trial) {
    return trial == at(scale.most());
  }

  private List<Mend> mends(
      NavigableSet<Integer> looked, Set<Failure> deciding, Set<Failure> wrong) {
    return wrong.stream()
        .map(
            failure -> {
              Set<Failure> both = new LinkedHashSet<>(List.of(failure));
              both.addAll(deciding);
              return new Mend(failure, ranges(looked, both));
            })
        .filter(mend -> !mend.ranges().isEmpty())
        .toList();
  }

  private Trial at(int step) {
    return trials.computeIfAbsent(
        step, value -> Trial.of(choices, property, scale.value(value), today, cancelled));
  }

  // Where to look, and for what.

  private NavigableSet<Integer> firstLook() {
    NavigableSet<Integer> steps = new TreeSet<>();
    for (int part = 0; part <= PARTS; part++) {
      long offset = (long) (scale.most() - scale.least()) * part / PARTS;
      steps.add(scale.least() + (int) offset);
    }
    Stream.of(scale.below(), scale.above())
        .filter(step -> scale.least() <= step && step <= scale.most())
        .forEach(steps::add);
    return steps;
  }

  /** Of what leaves floors dry today: all about power, and what comes closest to a rim. */
  private List<Failure> likely() {
    List<Failure> likely = new ArrayList<>();
    List<FailureResult.Answered> dry =
        today.results().results().stream()
            .filter(result -> !today.isWrong(result, today.installation()))
            .filter(FailureResult.Answered.class::isInstance)
            .map(FailureResult.Answered.class::cast)
            .toList();
    dry.stream()
        .map(FailureResult.Answered::failure)
        .filter(FailureTraits::isOrdinaryEvent)
        .forEach(likely::add);
    dry.stream()
        .sorted(Comparator.comparingDouble(answered -> leastLeft(answered.outcome())))
        .limit(CLOSEST)
        .map(FailureResult.Answered::failure)
        .forEach(likely::add);
    return likely;
  }

  /** Least freeboard of the vessels and basins that gained water (m). */
  private static double leastLeft(Outcome outcome) {
    return outcome.vessels().stream()
        .filter(vessel -> vessel.highestLevel() > vessel.levelBefore())
        .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
        .min()
        .orElse(Double.MAX_VALUE);
  }

  // Ranges.

  private List<SafeRange> ranges(NavigableSet<Integer> looked, Set<Failure> deciding) {
    List<SafeRange> ranges = new ArrayList<>();
    Optional<Integer> before = Optional.empty();
    int from = 0;
    Decider below = new Decider.NotLookedAt();
    for (int step : looked) {
      boolean safe = isSafe(step, deciding);
      boolean wasSafe = before.filter(last -> isSafe(last, deciding)).isPresent();
      if (safe && !wasSafe) {
        from = before.map(last -> lastSafe(step, last, deciding)).orElse(step);
        below = before.isPresent() ? wrong(from - 1, deciding) : new Decider.NotLookedAt();
      } else if (!safe && wasSafe) {
        int to = lastSafe(before.orElseThrow(), step, deciding);
        ranges.add(range(from, below, to, wrong(to + 1, deciding)));
      }
      before = Optional.of(step);
    }
    if (isSafe(looked.last(), deciding)) {
      ranges.add(range(from, below, looked.last(), new Decider.NotLookedAt()));
    }
    return ranges;
  }

  private SafeRange range(int from, Decider below, int to, Decider above) {
    return new SafeRange(scale.value(from), below, scale.value(to), above);
  }

  private boolean isSafe(int step, Set<Failure> deciding) {
    return at(step).firstWrong(deciding).isEmpty();
  }

  private Decider wrong(int step, Set<Failure> deciding) {
    return at(step).firstWrong(deciding).orElseThrow();
  }

  /**
   * The last safe step on the way from a safe one to one that is not: first for a failure that is
   * wrong there, then for one that is still wrong at that step, until none is.
   */
  private int lastSafe(int safe, int unsafe, Set<Failure> deciding) {
    int bad = unsafe;
    while (true) {
      Set<Failure> first = firstWrong(bad, deciding);
      int good = halved(safe, bad, first);
      if (isSafe(good, deciding)) {
        return good;
      }
      bad = good;
    }
  }

  /** One failure that is wrong there; none where the drawing itself is. */
  private Set<Failure> firstWrong(int step, Set<Failure> deciding) {
    return at(step).unsound().isPresent()
        ? Set.of()
        : deciding.stream()
            .filter(failure -> at(step).wrong(failure).isPresent())
            .limit(1)
            .collect(Collectors.toSet());
  }

  private int halved(int safe, int unsafe, Set<Failure> asked) {
    int good = safe;
    int bad = unsafe;
    while (Math.abs(bad - good) > 1) {
      int middle = good + (bad - good) / 2;
      if (isSafe(middle, asked)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  // All failures at the ends.

  /** What else is wrong at an end or in the middle of a range, but for what is wrong today. */
  private Set<Failure> unforeseen(List<SafeRange> holds, List<Mend> mends) {
    Set<Failure> more = new LinkedHashSet<>();
    Stream.concat(holds.stream(), mends.stream().flatMap(mend -> mend.ranges().stream()))
        .flatMap(range -> endsAndMiddle(range))
        .distinct()
        .forEach(step -> more.addAll(at(step).wrongOnes(today.notWrong(at(step).failures()))));
    return more;
  }

  private Stream<Integer> endsAndMiddle(SafeRange range) {
    int from = step(range.from());
    int to = step(range.to());
    return Stream.of(from, from + (to - from) / 2, to);
  }

  private int step(double value) {
    return (int) Math.round((value - scale.base()) / scale.step());
  }
}
