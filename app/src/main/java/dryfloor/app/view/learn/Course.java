package dryfloor.app.view.learn;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Exercises from easy to hard, and what was earned in them.
 *
 * @param exercises in order
 * @param marked those that are done, in order
 */
public record Course(List<Exercise> exercises, List<Marking> marked) {

  /** So many a course has; more nobody does in one sitting. */
  public static final int LENGTH = 12;

  /** The most that an exercise can earn. */
  public static final int FULL_MARKS = 100;

  public Course {
    exercises = List.copyOf(exercises);
    marked = List.copyOf(marked);
  }

  /**
   * Picks exercises of increasing difficulty from answered drawings, one verdict after the other so
   * that none can be guessed from the number of those before it.
   */
  public static Course from(List<SweepResult> drawings) {
    List<List<Exercise>> byVerdict =
        Stream.of(Verdict.values()).map(verdict -> ofVerdict(verdict, drawings)).toList();
    List<Exercise> picked = new ArrayList<>();
    int each = LENGTH / byVerdict.size();
    byVerdict.forEach(some -> picked.addAll(spread(some, each)));
    picked.sort(Comparator.comparing(Exercise::difficulty).thenComparing(Exercise::question));
    return new Course(picked, List.of());
  }

  private static List<Exercise> ofVerdict(Verdict verdict, List<SweepResult> drawings) {
    Set<List<Object>> seen = new HashSet<>();
    return drawings.stream()
        .flatMap(Course::answered)
        .filter(exercise -> exercise.outcome().verdict() == verdict)
        .sorted(Comparator.comparing(Exercise::difficulty).thenComparing(Exercise::question))
        .filter(exercise -> seen.add(looks(exercise)))
        .toList();
  }

  /** Two failures that do the same to the same drawing are one exercise. */
  private static List<Object> looks(Exercise exercise) {
    return List.of(
        exercise.drawing().name(),
        exercise.outcome().vessels().stream().map(Outcome.VesselOutcome::levelAfter).toList());
  }

  private static Stream<Exercise> answered(SweepResult sweep) {
    return sweep.results().stream()
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .filter(answered -> !answered.outcome().story().isEmpty())
        .map(
            answered -> new Exercise(sweep.installation(), answered.failure(), answered.outcome()));
  }

  /** So many from the easiest to the hardest, evenly. */
  private static List<Exercise> spread(List<Exercise> sorted, int number) {
    int count = Math.min(number, sorted.size());
    return IntStream.range(0, count)
        .map(i -> count == 1 ? 0 : i * (sorted.size() - 1) / (count - 1))
        .mapToObj(sorted::get)
        .toList();
  }

  /** Whether every exercise is done. */
  public boolean isDone() {
    return marked.size() == exercises.size();
  }

  /**
   * The exercise to be done now.
   *
   * @throws IllegalStateException if every one is done
   */
  public Exercise present() {
    if (isDone()) {
      throw new IllegalStateException("every exercise of the course is done");
    }
    return exercises.get(marked.size());
  }

  /** The course after the present exercise was marked. */
  public Course with(Marking marking) {
    return new Course(exercises, Stream.concat(marked.stream(), Stream.of(marking)).toList());
  }

  /** Points earned so far. */
  public int points() {
    return marked.stream().mapToInt(Marking::points).sum();
  }

  /** Points that could have been earned so far. */
  public int possible() {
    return FULL_MARKS * marked.size();
  }
}
