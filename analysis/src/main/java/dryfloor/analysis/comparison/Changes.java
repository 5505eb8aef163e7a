package dryfloor.analysis.comparison;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How the answers for one drawing differ from those for another: by verdict, then by the water on
 * floors, then by the margin. Failures that only one of the drawings has, or that only one of them
 * does not switch off, are told apart.
 *
 * @param better failures that end better now, the greatest change first
 * @param worse failures that end worse now
 * @param same failures that end as before
 * @param added failures that there were none of
 * @param gone failures that there are none of any more
 */
public record Changes(
    List<Change> better,
    List<Change> worse,
    List<Change> same,
    List<FailureResult> added,
    List<Gone> gone) {

  /**
   * A difference of water (m³) that no jug shows is none, nor is one of less than this share of the
   * water: the steps of the simulation are no finer.
   */
  private static final double SAME_VOLUME = 1e-4;

  private static final double SAME_SHARE = 1e-3;

  /** A difference of margin (m) that no rule shows. */
  private static final double SAME_MARGIN = 1e-3;

  public Changes {
    better = List.copyOf(better);
    worse = List.copyOf(worse);
    same = List.copyOf(same);
    added = List.copyOf(added);
    gone = List.copyOf(gone);
  }

  /** A failure of the drawing as it was, with the name it had there. */
  public record Gone(String id, String name) {}

  /** One failure, then and now. */
  public record Change(FailureResult before, FailureResult now) {

    /** Another verdict first, then by how much water, then by how much freeboard. */
    static final Comparator<Change> GREATEST_FIRST =
        Comparator.comparing((Change change) -> !change.isTurned())
            .thenComparingDouble(change -> -Math.abs(change.moreWater().orElse(0)))
            .thenComparingDouble(change -> -Math.abs(change.moreMargin().orElse(0)));

    public String failure() {
      return FailureNames.id(now.failure());
    }

    /** Whether its verdict is another one. */
    public boolean isTurned() {
      return rank(now) != rank(before);
    }

    /** How much more water (m³) reaches floors now, where both have an answer. */
    public OptionalDouble moreWater() {
      return difference(Outcome::reachedFloors);
    }

    /** How much more freeboard (m) is left now, where both have an answer. */
    public OptionalDouble moreMargin() {
      return difference(outcome -> outcome.margin().freeboard());
    }

    private OptionalDouble difference(ToDoubleFunction<Outcome> number) {
      return outcome(before).stream()
          .flatMap(
              then ->
                  outcome(now).stream()
                      .map(present -> number.applyAsDouble(present) - number.applyAsDouble(then)))
          .mapToDouble(Double::doubleValue)
          .findFirst();
    }

    /** Above zero where it ends worse now, below where it ends better. */
    int direction() {
      int verdict = Integer.compare(rank(now), rank(before));
      if (verdict != 0) {
        return verdict;
      }
      return outcome(before)
          .flatMap(then -> outcome(now).map(present -> direction(then, present)))
          .orElse(0);
    }

    private static int direction(Outcome then, Outcome now) {
      double water = now.reachedFloors() - then.reachedFloors();
      double same =
          Math.max(SAME_VOLUME, SAME_SHARE * Math.max(then.reachedFloors(), now.reachedFloors()));
      if (Math.abs(water) > same) {
        return water > 0 ? 1 : -1;
      }
      double margin = now.margin().freeboard() - then.margin().freeboard();
      return Math.abs(margin) < SAME_MARGIN ? 0 : margin > 0 ? -1 : 1;
    }
  }

  /** Compares the answers, failure by failure. */
  public static Changes between(SweepResult before, SweepResult now) {
    Map<String, FailureResult> old = new HashMap<>();
    asked(before).forEach(result -> old.put(FailureNames.id(result.failure()), result));
    List<Change> changes = new ArrayList<>();
    List<FailureResult> added = new ArrayList<>();
    for (FailureResult result : asked(now)) {
      Optional.ofNullable(old.remove(FailureNames.id(result.failure())))
          .ifPresentOrElse(then -> changes.add(new Change(then, result)), () -> added.add(result));
    }
    changes.sort(Change.GREATEST_FIRST);
    return new Changes(
        changes.stream().filter(change -> change.direction() < 0).toList(),
        changes.stream().filter(change -> change.direction() > 0).toList(),
        changes.stream().filter(change -> change.direction() == 0).toList(),
        added,
        before.results().stream()
            .map(FailureResult::failure)
            .map(
                failure ->
                    new Gone(
                        FailureNames.id(failure),
                        FailureNames.name(failure, before.installation())))
            .filter(gone -> old.containsKey(gone.id()))
            .toList());
  }

  /** A failure that is switched off is neither better nor worse: nobody asks about it. */
  private static List<FailureResult> asked(SweepResult sweep) {
    return sweep.results().stream()
        .filter(result -> !(result instanceof FailureResult.Skipped))
        .toList();
  }

  public boolean isEmpty() {
    return better.isEmpty() && worse.isEmpty() && added.isEmpty() && gone.isEmpty();
  }

  /** No answer is worst: nobody knows. */
  private static int rank(FailureResult result) {
    return switch (result) {
      case FailureResult.Skipped skipped -> 0;
      case FailureResult.Answered answered ->
          switch (answered.outcome().verdict()) {
            case DRY -> 1;
            case CAUGHT -> 2;
            case WET -> 3;
          };
      case FailureResult.Unanswered unanswered -> 4;
    };
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }
}
