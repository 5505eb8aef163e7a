package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.Inquiry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What every two failures do at once, worked out where a third asks for it, and kept. */
final class Joints {

  private final List<Alone> failures;
  private final Map<Failure, Alone> alone;
  private final Idle idle;
  private final Optional<Influences> influences;
  private final Map<Pair, Joint> known = new ConcurrentHashMap<>();

  Joints(Inquiry inquiry, List<Alone> failures) {
    this.failures = failures;
    alone = failures.stream().collect(Collectors.toMap(Alone::failure, Function.identity()));
    idle = new Idle(inquiry.installation());
    influences = Influences.of(inquiry);
  }

  /** Takes the course of two failures that were simulated. */
  void simulated(Pair pair, Outcome course) {
    List<Effect> effects = effects(alone(pair.first()), alone(pair.second()));
    known.put(pair, joint(effects, course));
  }

  /**
   * What two failures do that leave every floor dry.
   *
   * @throws IllegalStateException if that is not known
   */
  Joint of(PairAnswer answer) {
    return known.computeIfAbsent(answer.pair(), pair -> withoutSimulation(answer));
  }

  private Joint withoutSimulation(PairAnswer answer) {
    Alone first = alone(answer.pair().first());
    Alone second = alone(answer.pair().second());
    return switch (answer) {
      case PairAnswer.AsOneAlone same -> asOneAlone(first, second);
      case PairAnswer.Apart apart -> apart(first, second);
      case PairAnswer.Together together -> throw unknown(together);
      case PairAnswer.WetAlone wet -> throw unknown(wet);
      case PairAnswer.Excluded excluded -> throw unknown(excluded);
      case PairAnswer.Unanswered open -> throw unknown(open);
    };
  }

  private static IllegalStateException unknown(PairAnswer answer) {
    return new IllegalStateException("nobody saw what two failures do at once: " + answer);
  }

  private Joint asOneAlone(Alone first, Alone second) {
    Outcome one = first.outcome().orElseThrow();
    boolean asFirst = idle.addsNothing(second.effects(), first.effects(), List.of(one));
    return joint(effects(first, second), asFirst ? one : second.outcome().orElseThrow());
  }

  private Joint joint(List<Effect> effects, Outcome course) {
    return new Joint(
        influences.map(all -> all.of(effects, course)), idle(effects, List.of(course)));
  }

  private Joint apart(Alone first, Alone second) {
    return new Joint(
        first.influence().flatMap(one -> second.influence().map(one::and)),
        idle(
            effects(first, second),
            List.of(first.outcome().orElseThrow(), second.outcome().orElseThrow())));
  }

  private static List<Effect> effects(Alone first, Alone second) {
    List<Effect> both = new ArrayList<>(first.effects());
    both.addAll(second.effects());
    return both;
  }

  private Set<Failure> idle(List<Effect> already, List<Outcome> courses) {
    return failures.stream()
        .filter(other -> idle.addsNothing(other.effects(), already, courses))
        .map(Alone::failure)
        .collect(Collectors.toSet());
  }

  private Alone alone(Failure failure) {
    return Optional.ofNullable(alone.get(failure)).orElseThrow();
  }
}
