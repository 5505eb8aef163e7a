package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * Finds the value of a property nearest to today's that mends one failure without harm elsewhere.
 * It asks values all over the scale about that failure alone, goes from the nearest that helps back
 * towards today's as far as it still does, and only then runs every failure. A range that lies
 * wholly between two neighbouring values of the first look is not seen.
 */
final class NearestMend {

  /** Parts into which the scale is divided at first. */
  private static final int PARTS = 16;

  private final Choices choices;
  private final Property property;
  private final Scale scale;
  private final Today today;
  private final Failure failure;
  private final Proof proof;
  private final BooleanSupplier cancelled;
  private final Map<Integer, Boolean> helping = new HashMap<>();
  private final Map<Integer, Optional<Proven>> proven = new HashMap<>();

  NearestMend(
      Choices choices,
      Property property,
      Today today,
      Failure failure,
      Proof proof,
      BooleanSupplier cancelled) {
    this.choices = choices;
    this.property = property;
    this.scale = choices.scale(property);
    this.today = today;
    this.failure = failure;
    this.proof = proof;
    this.cancelled = cancelled;
  }

  Optional<Proven> find() {
    return Stream.of(towards(1), towards(-1))
        .flatMap(Optional::stream)
        .min(Comparator.comparingDouble(found -> found.change().share()));
  }

  /** The nearest on one side of today's value. */
  private Optional<Proven> towards(int direction) {
    int last = direction > 0 ? scale.below() : scale.above();
    for (int step : looked(direction)) {
      if (helps(step)) {
        int nearest = helps(last) ? last : nearest(last, step, this::helps);
        if (proof(nearest).isPresent()) {
          return proof(nearest);
        }
        if (proof(step).isPresent()) {
          return proof(nearest(nearest, step, between -> proof(between).isPresent()));
        }
      }
      last = step;
    }
    return Optional.empty();
  }

  /** Between one that does not and one that does, the nearest to the first that does. */
  private static int nearest(int not, int does, IntPredicate mends) {
    int bad = not;
    int good = does;
    while (Math.abs(good - bad) > 1) {
      int middle = bad + (good - bad) / 2;
      if (mends.test(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private List<Integer> looked(int direction) {
    List<Integer> steps = new ArrayList<>();
    for (int part = 0; part <= PARTS; part++) {
      int step = scale.least() + (int) ((long) (scale.most() - scale.least()) * part / PARTS);
      if (direction > 0 ? step > scale.below() : step < scale.above()) {
        steps.add(step);
      }
    }
    steps.sort(Comparator.comparingInt(step -> direction * step));
    return steps.stream().distinct().toList();
  }

  private boolean helps(int step) {
    return helping.computeIfAbsent(
        step,
        value ->
            Trial.of(choices, property, scale.value(value), today, cancelled)
                .firstWrong(List.of(failure))
                .isEmpty());
  }

  private Optional<Proven> proof(int step) {
    return proven.computeIfAbsent(
        step,
        value -> {
          SingleChange change = SingleChange.Moved.of(property, scale, scale.value(value));
          return proof.of(change);
        });
  }
}
