package dryfloor.analysis.plain;

import java.util.Arrays;
import java.util.Optional;

/**
 * Differences between the engine and the plain simulator that are known by name, with their reason.
 * Each names the scenarios and failures that it holds for; no tolerance is widened for it, and the
 * verdicts are the same.
 */
enum Explained {
  /**
   * Where the engine has moved water through a drain again after a change, the lower leg holds what
   * the flow lifts its column by; in the plain simulator (and in the start of the engine's normal
   * operation) falling water takes no room in a pipe. Up to 0.8 L, which a sump or a reservoir then
   * lacks.
   */
  COLUMN_IN_A_WORKING_DRAIN(
      "first-look|loft-reservoir|restaurant-seafood",
      "half-clogged[.]teeth|"
          + "drips-at-lowest-point[.]return|"
          + "power-lost-and-back[.]building|"
          + "pump-delivers-half[.]return-pump"),

  /**
   * A shallow drain begins to run full: in the engine it does so up to three seconds sooner,
   * probably because water stands in its lower leg by then; in the plain simulator that leg is
   * empty and lets nothing out until it has filled. In a burst that is up to 4 % of what passes
   * over the rim of the basin meanwhile.
   */
  SECONDS_OF_A_BURST(
      "first-look/as-drawn",
      "joint-parts[.]return-line[.]pump-union|"
          + "parts-at-lowest-point[.]return-line|"
          + "wall-fails[.]display|"
          + "wall-fails[.]sump");

  private final String scenarios;
  private final String failures;

  /** Both are patterns. */
  Explained(String scenarios, String failures) {
    this.scenarios = scenarios;
    this.failures = failures;
  }

  /** The reason that a comparison differs, if it is known. */
  static Optional<Explained> of(Comparison comparison) {
    return Arrays.stream(values())
        .filter(
            known ->
                comparison.scenario().matches("(" + known.scenarios + ").*")
                    && comparison.failure().matches(known.failures)
                    && comparison.engine() == comparison.plain())
        .findFirst();
  }
}
