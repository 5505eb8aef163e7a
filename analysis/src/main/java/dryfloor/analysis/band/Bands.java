package dryfloor.analysis.band;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Answers how bad and how good every failure can be, given what is known within limits only.
 *
 * <p>Every failure is run as drawn and with each uncertain value alone at each of its ends. Then
 * every combination of ends is run if there are at most {@value #EVERY_CORNER_UP_TO} values;
 * otherwise the corners are searched ({@link Climbs}). Points by chance are run if asked for. The
 * band of a failure spans all that was run; what lies between is not known, although it mostly lies
 * within.
 */
public final class Bands {

  /** Of six values there are 64 combinations of ends. */
  public static final int EVERY_CORNER_UP_TO = 6;

  private final Uncertain uncertain;
  private final List<Failure> failures;
  private final Runs runs;

  private Bands(Uncertain uncertain, List<Failure> failures, Runs runs) {
    this.uncertain = uncertain;
    this.failures = failures;
    this.runs = runs;
  }

  /**
   * Answers every failure that is not switched off.
   *
   * @param sampling points by chance, if any
   * @param threads to use; the answers do not depend on it
   * @throws BaselineProblem if the installation, as drawn, spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it
   */
  public static BandResult of(
      Uncertain uncertain, Optional<Sampling> sampling, int threads, Progress progress)
      throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(drawn(uncertain), progress::cancelled);
    List<Failure> failures = asked(inquiry.installation());
    Runs runs = new Runs(uncertain, failures, threads, progress);
    progress.settled(inquiry.normal());
    runs.drawn(inquiry);
    return new Bands(uncertain, failures, runs).all(sampling);
  }

  /**
   * At how many points every failure is run at least.
   *
   * @param values that are not known exactly, at most {@value #EVERY_CORNER_UP_TO}
   */
  public static int points(int values) {
    int endsAlone = values > 1 ? 2 * values : 0;
    int corners = values > 0 ? 1 << values : 0;
    return 1 + endsAlone + corners;
  }

  private static Installation drawn(Uncertain uncertain) {
    try {
      return uncertain.at(Point.asDrawn(uncertain.values()));
    } catch (Uncertain.NotDrawable fault) {
      throw new IllegalArgumentException("a drawing that is not sound as drawn", fault);
    }
  }

  private static List<Failure> asked(Installation installation) {
    Set<String> skipped =
        installation.failureSettings().skipped().stream()
            .map(FailureSettings.Skipped::failure)
            .collect(Collectors.toSet());
    return FailureCatalogue.of(installation).stream()
        .filter(failure -> !skipped.contains(FailureNames.id(failure)))
        .toList();
  }

  private BandResult all(Optional<Sampling> sampling) {
    int values = uncertain.values();
    boolean everyCorner = values <= EVERY_CORNER_UP_TO;
    List<Point> points = new ArrayList<>(endsAlone(values));
    if (everyCorner && values > 0) {
      IntStream.range(0, 1 << values)
          .mapToObj(bits -> Point.corner(values, bits))
          .forEach(points::add);
    }
    List<Point> samples = sampling.map(asked -> asked.points(values)).orElse(List.of());
    points.addAll(samples);
    runs.run(everyFailureAt(points));
    if (!everyCorner) {
      Climbs.all(runs, values, failures.size());
    }
    List<Band> bands =
        IntStream.range(0, failures.size())
            .mapToObj(this::band)
            .sorted(Comparator.comparing(band -> band.worst().figures(), Figures.WORSE_FIRST))
            .toList();
    return new BandResult(
        bands,
        IntStream.range(0, values)
            .mapToObj(value -> Weight.of(value, bands))
            .sorted(Weight.MOST_FIRST)
            .toList(),
        everyCorner,
        runs.points().size(),
        runs.unsound(),
        sampling.map(asked -> sampled(asked, samples)));
  }

  private static List<Point> endsAlone(int values) {
    Point drawn = Point.asDrawn(values);
    return IntStream.range(0, values)
        .boxed()
        .flatMap(value -> List.of(drawn.with(value, -1), drawn.with(value, 1)).stream())
        .toList();
  }

  private Map<Point, SortedSet<Integer>> everyFailureAt(List<Point> points) {
    SortedSet<Integer> all =
        IntStream.range(0, failures.size()).boxed().collect(Collectors.toCollection(TreeSet::new));
    Map<Point, SortedSet<Integer>> wanted = new LinkedHashMap<>();
    points.forEach(point -> wanted.put(point, all));
    return wanted;
  }

  private Band band(int failure) {
    List<Band.Reached> reached =
        runs.points().stream()
            .flatMap(
                point ->
                    runs.figures(point, failure).stream()
                        .map(figures -> new Band.Reached(point, figures)))
            .toList();
    // The first of equals, so that what is as drawn is told before any end.
    Band.Reached worst = reached.getFirst();
    Band.Reached best = reached.getFirst();
    for (Band.Reached other : reached) {
      worst = other.figures().isWorseThan(worst.figures()) ? other : worst;
      best = best.figures().isWorseThan(other.figures()) ? other : best;
    }
    List<Figures.Known> known =
        reached.stream()
            .map(Band.Reached::figures)
            .filter(Figures.Known.class::isInstance)
            .map(Figures.Known.class::cast)
            .toList();
    return new Band(
        failures.get(failure),
        reached.getFirst().figures(),
        worst,
        best,
        Range.of(known.stream().map(Figures.Known::onFloors).toList()),
        Range.of(known.stream().map(Figures.Known::margin).toList()),
        swings(failure),
        known.stream().flatMap(k -> k.inDoubt().stream()).distinct().sorted().toList());
  }

  private List<Swing> swings(int failure) {
    Point drawn = Point.asDrawn(uncertain.values());
    return IntStream.range(0, uncertain.values())
        .mapToObj(
            value ->
                Swing.of(
                    value,
                    List.of(drawn, drawn.with(value, -1), drawn.with(value, 1)).stream()
                        .flatMap(point -> runs.figures(point, failure).stream())
                        .toList()))
        .sorted(Swing.MOST_FIRST)
        .toList();
  }

  private Sampled sampled(Sampling sampling, List<Point> samples) {
    Map<Failure, Integer> dryAfter = new HashMap<>();
    for (int i = 0; i < failures.size(); i++) {
      int failure = i;
      dryAfter.put(
          failures.get(i), (int) samples.stream().filter(at -> isDry(at, failure)).count());
    }
    long dry =
        samples.stream()
            .filter(at -> IntStream.range(0, failures.size()).allMatch(i -> isDry(at, i)))
            .count();
    return new Sampled(sampling, (int) dry, dryAfter);
  }

  private boolean isDry(Point point, int failure) {
    return runs.figures(point, failure).filter(Figures::isDry).isPresent();
  }
}
