package dryfloor.analysis.absence;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What can become of an installation while nobody is there.
 *
 * @param times lengths of absence that were asked about (s), shortest first
 * @param failures each failure, in the order of the list; those switched off are left out
 */
public record AbsenceResult(List<Double> times, List<LeftAlone> failures) {

  public AbsenceResult {
    times = List.copyOf(times);
    failures = List.copyOf(failures);
  }

  /** Failures with an answer. */
  public List<LeftAlone.Known> known() {
    return failures.stream()
        .filter(LeftAlone.Known.class::isInstance)
        .map(LeftAlone.Known.class::cast)
        .toList();
  }

  /** Failures without one. */
  public List<LeftAlone.Unknown> unknown() {
    return failures.stream()
        .filter(LeftAlone.Unknown.class::isInstance)
        .map(LeftAlone.Unknown.class::cast)
        .toList();
  }

  /** Those that wet a floor within the longest absence, soonest first. */
  public List<LeftAlone.Known> wet() {
    return known().stream()
        .filter(failure -> failure.firstWet().isPresent())
        .sorted(Comparator.comparingDouble(failure -> failure.firstWet().getAsDouble()))
        .toList();
  }

  /** How many wet a floor by the end of an absence (s). */
  public long wetBy(double time) {
    return known().stream().filter(failure -> failure.isWetBy(time)).count();
  }

  /** The failure that is worst by the end of an absence (s), if one wets a floor by then. */
  public Optional<LeftAlone.Known> worstBy(double time) {
    int index = times.indexOf(time);
    return known().stream()
        .filter(failure -> failure.isWetBy(time))
        .min(Comparator.comparing(failure -> failure.howBad().get(index)));
  }
}
