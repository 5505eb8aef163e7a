package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.SweepResult;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Tells which failures certainly do the same on floors in a drawing that differs in one thing.
 *
 * <p>What the difference changes is seen in what goes on there when nothing fails, and what a
 * failure changes in its course as drawn. If neither is felt by anything that feels the other, the
 * two side by side satisfy every law of the changed drawing with that failure ({@link Influences}
 * says why), so the floors that it leaves dry as drawn stay dry.
 */
public final class Untouched {

  private final Influences influences;
  private final Map<Failure, Alone> alone = new HashMap<>();

  private Untouched(Inquiry drawn, Influences influences, SweepResult answers) {
    this.influences = influences;
    Alone.of(drawn, answers, Optional.of(influences))
        .forEach(failure -> alone.put(failure.failure(), failure));
  }

  /**
   * Ready to be asked about changes of a drawing.
   *
   * @param drawn as it is
   * @param answers every failure of it
   * @return nothing where what goes on there without a failure has no answer
   */
  public static Optional<Untouched> of(Inquiry drawn, SweepResult answers) {
    return Influences.of(drawn).map(influences -> new Untouched(drawn, influences, answers));
  }

  /**
   * Failures that leave dry in a changed drawing what they leave dry as drawn; of others nothing is
   * said.
   *
   * @param changed the drawing with one element or part changed, settled
   * @param id of that element or part
   */
  public Predicate<Failure> in(Inquiry changed, String id) {
    Optional<Influences.Influence> difference =
        changed
            .undisturbed()
            .filter(usual -> usual.verdict() == Verdict.DRY)
            .flatMap(usual -> influences.ofChange(id, usual));
    return failure ->
        difference.isPresent()
            && Optional.ofNullable(alone.get(failure))
                .filter(known -> isApart(known, difference.get(), changed))
                .isPresent();
  }

  private static boolean isApart(Alone known, Influences.Influence difference, Inquiry changed) {
    List<Effect> effects = FailureResolver.resolve(changed.installation(), known.failure());
    return known.influence().filter(influence -> !influence.meets(difference)).isPresent()
        && known.effects().equals(effects);
  }
}
