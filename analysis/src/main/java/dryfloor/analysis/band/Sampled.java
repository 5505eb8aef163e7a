package dryfloor.analysis.band;

import dryfloor.analysis.failure.Failure;
import java.util.Map;
import java.util.Optional;

/**
 * What came of points by chance. A share of them is no probability: nobody knows how likely each
 * place between two ends is.
 *
 * @param sampling how they were chosen
 * @param dry at how many of them no failure wets a floor
 * @param dryAfter for each failure, at how many of them it leaves every floor dry
 */
public record Sampled(Sampling sampling, int dry, Map<Failure, Integer> dryAfter) {

  public Sampled {
    dryAfter = Map.copyOf(dryAfter);
  }

  /** At how many of them this failure leaves every floor dry. */
  public int dryAfter(Failure failure) {
    return Optional.ofNullable(dryAfter.get(failure)).orElseThrow();
  }
}
