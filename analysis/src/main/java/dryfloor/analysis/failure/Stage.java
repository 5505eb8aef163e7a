package dryfloor.analysis.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * A stretch of time during which the same things are built in.
 *
 * @param begins when (s)
 * @param ends when the next stage begins, endless for the last one
 * @param effects what is built in meanwhile, the latest first, and all that has a time of its own
 */
public record Stage(double begins, double ends, List<Effect> effects) {

  public Stage {
    effects = List.copyOf(effects);
  }

  /** The stages of these effects in order, the first beginning at zero; often there is but one. */
  public static List<Stage> of(List<Effect> effects) {
    TreeSet<Double> turns = new TreeSet<>(List.of(0.0));
    for (Effect effect : effects) {
      if (effect instanceof Effect.During during) {
        turns.add(during.from());
        turns.add(during.to());
      }
    }
    turns.remove(Double.POSITIVE_INFINITY);
    List<Stage> stages = new ArrayList<>();
    for (double begins : turns) {
      Double next = turns.higher(begins);
      double ends = next == null ? Double.POSITIVE_INFINITY : next;
      stages.add(new Stage(begins, ends, at(begins, effects)));
    }
    return List.copyOf(stages);
  }

  private static List<Effect> at(double time, List<Effect> effects) {
    List<Effect> now = new ArrayList<>();
    effects.stream()
        .filter(Effect.During.class::isInstance)
        .map(Effect.During.class::cast)
        .filter(during -> during.from() <= time && time < during.to())
        .sorted(Comparator.comparingDouble(Effect.During::from).reversed())
        .forEach(during -> now.add(during.what()));
    effects.stream().filter(effect -> !(effect instanceof Effect.During)).forEach(now::add);
    return now;
  }
}
