package dryfloor.analysis.plain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Differences between the engine and the plain simulator that are known by name, with their reason.
 * Each names the scenarios and failures that it holds for; no tolerance is widened for it.
 */
enum Explained {
  /**
   * Where the engine has moved water through a drain again after a stop, the lower leg holds what
   * the flow lifts its column by; in the plain simulator (and in the engine's own normal operation)
   * falling water holds no room in a pipe. Up to 0.6 L, which a sump or a top-off then lacks.
   */
  COLUMN_IN_A_WORKING_DRAIN(
      List.of(),
      List.of()),

  /**
   * A half-clogged mouth of a drain with air in it: plain takes half the ring and half the orifice,
   * the engine the whole of both and a loss as of a full pipe.
   */
  HALF_CLOGGED_MOUTH(List.of(), List.of()),

  /** The plain simulator has the filling line behind a shut valve full, the engine empty. */
  FILLING_LINE_BEHIND_A_SHUT_VALVE(List.of(), List.of()),

  /**
   * A shallow drain begins to run full: in the engine its lower leg is part full by then, in the
   * plain simulator empty, so that it lets nothing out for a second longer. In a burst that is up
   * to 4 % of what passes over the rim of the basin meanwhile.
   */
  SECONDS_OF_A_BURST(List.of(), List.of());

  private final List<String> scenarios;
  private final List<String> failures;

  Explained(List<String> scenarios, List<String> failures) {
    this.scenarios = scenarios;
    this.failures = failures;
  }

  /** The reason that a comparison differs, if it is known. */
  static Optional<Explained> of(Comparison comparison) {
    return Arrays.stream(values())
        .filter(
            known ->
                known.scenarios.stream().anyMatch(comparison.scenario()::startsWith)
                    && known.failures.contains(comparison.failure()))
        .findFirst();
  }
}
