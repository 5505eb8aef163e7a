package dryfloor.analysis.installation;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.List;
import java.util.function.Predicate;

/** A drawing in which few things can fail. */
public final class OnlyWith {

  private OnlyWith() {}

  /** The same drawing with all other failures switched off. */
  public static Installation failures(Installation drawn, Predicate<Failure> kept) {
    FailureSettings usual = drawn.failureSettings();
    List<FailureSettings.Skipped> skipped =
        FailureCatalogue.of(drawn).stream()
            .filter(kept.negate())
            .map(failure -> new FailureSettings.Skipped(FailureNames.id(failure), "not asked for"))
            .toList();
    return drawn.withFailureSettings(
        new FailureSettings(
            skipped,
            usual.topUps(),
            usual.sequences(),
            usual.dripArea(),
            usual.outage(),
            usual.surge()));
  }
}
