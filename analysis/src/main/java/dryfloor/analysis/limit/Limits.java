package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.sweep.Team;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Finds how far what a user may choose can be changed before a floor gets wet. */
public final class Limits {

  /** A level that follows less than this share of a change is set by something else. */
  private static final double FOLLOWS = 0.5;

  /** By so many steps a level is filled higher to see whether it stays (mm). */
  private static final int FILLED = 5;

  /** So many changes of numbers are looked into for each failure that they mend. */
  private static final int NUMBERS = 4;

  private final Choices choices;
  private final Today today;
  private final Progress progress;

  private Limits(Today today, Progress progress) {
    this.choices = new Choices(today.installation());
    this.today = today;
    this.progress = progress;
  }

  /** Everything that may be chosen in a drawing, in its order. */
  public static List<Property> properties(Installation installation) {
    return new Choices(installation).all();
  }

  /**
   * Finds the limits of these properties, and what mends the failures that wet a floor today: the
   * numbers among them, and where all properties are asked about also what may be added.
   *
   * @param bounds what no failure may do; one that does it today already is not held against a
   *     value
   * @param threads to use; the answers do not depend on it
   * @param progress told of failures first, then of properties
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static LimitResult of(
      Installation installation,
      List<Property> properties,
      Bounds bounds,
      int threads,
      Progress progress)
      throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(installation, progress::cancelled);
    Today today = new Today(Sweep.everyFailure(inquiry, threads, progress), bounds);
    Limits limits = new Limits(today, progress);
    LimitResult found = limits.found(limits.answers(properties, threads), List.of());
    boolean whole = properties.containsAll(limits.choices.all());
    return limits.found(found.answers(), limits.remedies(found, whole, threads));
  }

  /**
   * Finds the limits of these properties of a drawing whose failures are answered, and no more.
   *
   * @param bounds what no failure may do; one that does it today already is not held against a
   *     value
   * @param threads to use; the answers do not depend on it
   * @param progress told of properties
   * @return one for each property, in their order
   */
  public static List<LimitAnswer> of(
      SweepResult today, List<Property> properties, Bounds bounds, int threads, Progress progress) {
    return new Limits(new Today(today, bounds), progress).answers(properties, threads);
  }

  private LimitResult found(List<LimitAnswer> answers, List<Remedy> remedies) {
    return new LimitResult(today.results(), today.bounds(), answers, remedies);
  }

  private List<LimitAnswer> answers(List<Property> properties, int threads) {
    LimitAnswer[] answers = new LimitAnswer[properties.size()];
    Team.share(answers.length, threads, progress, i -> answers[i] = answer(properties.get(i)));
    return IntStream.range(0, answers.length)
        .mapToObj(
            i -> Optional.ofNullable(answers[i]).orElseGet(() -> cancelled(properties.get(i))))
        .toList();
  }

  /**
   * Finds everything that mends one failure, and no limits.
   *
   * @param bounds what no failure may do
   * @param threads to use; the answers do not depend on it
   * @param progress told of failures first, then of changes
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it
   */
  public static LimitResult mends(
      Installation installation, Failure failure, Bounds bounds, int threads, Progress progress)
      throws BaselineProblem {
    Today today = new Today(Sweep.everyFailure(installation, threads, progress), bounds);
    return new Limits(today, progress)
        .found(List.of(), Mends.of(today, failure, threads, progress));
  }

  /** What was found to mend each failure that does today what none may, and what may be added. */
  private List<Remedy> remedies(LimitResult limits, boolean additions, int threads) {
    try {
      return limits.wrongToday().stream()
          .flatMap(
              failure ->
                  Mends.withAdditions(
                      today,
                      failure,
                      limits.mends(failure).stream().limit(NUMBERS).toList(),
                      additions,
                      threads,
                      progress)
                      .stream())
          .toList();
    } catch (CancellationException cancelled) {
      return List.of();
    }
  }

  /**
   * How high the water of each vessel may stand in normal operation (elevation, m) before a failure
   * wets a floor that wets none today, by vessel. Left out are vessels whose level an edge or a
   * pipe sets, and those that may be filled to the rim.
   *
   * @param threads to use; the answers do not depend on it
   * @param progress told of vessels; not to be cancelled, as half the marks would pass for all
   */
  public static Map<String, Double> highestRunningLevels(
      SweepResult today, int threads, Progress progress) {
    Limits limits = new Limits(new Today(today, Bounds.DRY_FLOORS), Progress.NONE);
    List<Property.RunningLevel> levels =
        properties(today.installation()).stream()
            .filter(Property.RunningLevel.class::isInstance)
            .map(Property.RunningLevel.class::cast)
            .toList();
    boolean[] free = new boolean[levels.size()];
    Team.share(
        levels.size(), threads, Progress.NONE, i -> free[i] = limits.held(levels.get(i)).isEmpty());
    List<Property.RunningLevel> asked =
        IntStream.range(0, free.length).filter(i -> free[i]).mapToObj(levels::get).toList();
    return new HighestLevels(limits.today, threads, progress).of(limits.choices, asked);
  }

  private LimitAnswer answer(Property property) {
    try {
      LimitAnswer answer =
          held(property)
              .orElseGet(
                  () -> new LimitSearch(choices, property, today, progress::cancelled).search());
      return progress.cancelled() ? cancelled(property) : answer;
    } catch (CancellationException whileSettling) {
      return cancelled(property);
    }
  }

  private LimitAnswer cancelled(Property property) {
    return new LimitAnswer.Cancelled(property, choices.scale(property));
  }

  /** Whether a level goes back to where it settles today when it is filled a little more. */
  private Optional<LimitAnswer> held(Property property) {
    return held(choices, property, today, progress::cancelled);
  }

  static Optional<LimitAnswer> held(
      Choices choices, Property property, Today today, BooleanSupplier cancelled) {
    if (!(property instanceof Property.RunningLevel level)) {
      return Optional.empty();
    }
    Scale scale = choices.scale(property);
    double more = FILLED * scale.step();
    Trial filled = Trial.of(choices, property, scale.today() + more, today, cancelled);
    double settled = Trial.settled(level, today.normal());
    return filled
        .inquiry()
        .map(inquiry -> Trial.settled(level, inquiry.normal()))
        .filter(higher -> higher - settled < FOLLOWS * more)
        .map(higher -> new LimitAnswer.HeldByOthers(property, scale, settled));
  }
}
