package dryfloor.analysis.plain;

import java.util.Arrays;
import java.util.Optional;

/**
 * Differences between the engine and the plain simulator that are known by name, with their reason.
 * Each names the scenarios and failures that it holds for and how far they may differ; the verdicts
 * are the same.
 */
enum Explained {
  COLUMN_IN_A_WORKING_DRAIN(
      "**Water in a working drain.** Where the engine has moved water through a drain again after a "
          + "change, the lower leg holds what the flow lifts its column by; in the plain simulator "
          + "(and in the start of the engine's normal operation) falling water takes no room in a "
          + "pipe. The sump below then lacks up to 0.8 L, or the reservoir that tops it up; or a pump "
          + "that a leak sensor stops runs on for the third of a second in which that water is under "
          + "way.",
      "first-look/.*|loft-reservoir/.*|restaurant-seafood/.*",
      "half-clogged[.](teeth|first-baffle)|"
          + "drips-at-lowest-point[.](return|main-drain)|"
          + "joint-drips[.]main-drain[.].*|"
          + "power-lost-and-back[.]building|"
          + "power-flickers[.]building|"
          + "circuit-trips-for-a-while[.]plant-circuit|"
          + "topped-up-while-stopped[.]pump-chamber|"
          + "second-end-sinks[.]main-drain|"
          + "parts-at-lowest-point[.](main-drain|chiller-loop)|"
          + "joint-parts[.](main-drain|riser)[.].*|"
          + "second-end-slips-out[.]main-drain|"
          + "pump-delivers-half[.]return-pump",
      "sump|pump-chamber|top-off|loft-reservoir|fresh-water-reservoir|gully|plant-cellar",
      4e-3,
      0.01),

  SECONDS_OF_A_BURST(
      "**Seconds of a burst.** A shallow drain begins to run full: in the engine it does so up to "
          + "three seconds sooner, because water stands in its lower leg by then; in the plain "
          + "simulator that leg is empty and lets nothing out until it has filled. In a burst that "
          + "is up to 4 % of what passes over the rim of the basin meanwhile.",
      "first-look/.*",
      "joint-parts[.]return-line[.]pump-union|"
          + "parts-at-lowest-point[.]return-line|"
          + "wall-fails[.]display|"
          + "wall-fails[.]sump",
      "gully|plant-room|hall",
      0.5e-3,
      0.04),

  MOUTH_OF_A_SHORT_PIPE(
      "**The mouth of a short pipe.** What is left of the skimmer's line hangs in the settling "
          + "chamber and lets its water out below. In the engine it runs full until its end is bare; "
          + "in the plain simulator it never counts as full, so that the last millimetres over its "
          + "mouth fall in as over a lip, more slowly.",
      "restaurant-seafood/as-drawn",
      "connection-lets-go[.]skimmer",
      "plant-cellar",
      0.5e-3,
      0.008),

  FILM_ON_TWO_FLOORS(
      "**A film on two floors.** The plain simulator stops while a film of some thousandths of a "
          + "millimetre still runs off; on its way to the gully through the shelf's room and the "
          + "cellar below it lies on two floors.",
      "restaurant-seafood/.*",
      "wall-fails[.]oyster-shelf",
      "gully",
      0.5e-3,
      0.02);

  private final String words;
  private final String scenarios;
  private final String failures;
  private final String places;
  private final double level;
  private final double share;

  /**
   * Scenarios, failures and places are patterns.
   *
   * @param places at which the water or the level differs
   * @param level that they may differ by (m)
   * @param share of the water that they may differ by
   */
  Explained(
      String words, String scenarios, String failures, String places, double level, double share) {
    this.words = words;
    this.places = places;
    this.scenarios = scenarios;
    this.failures = failures;
    this.level = level;
    this.share = share;
  }

  String words() {
    return words;
  }

  boolean explains(Comparison comparison) {
    return comparison.engine() == comparison.plain()
        && comparison.scenario().matches(scenarios)
        && comparison.failure().matches(failures)
        && explains(comparison.level(), Math.abs(comparison.level().value()) <= level)
        && explains(comparison.water(), Math.abs(comparison.water().share()) <= share);
  }

  private boolean explains(Comparison.Difference difference, boolean isWithin) {
    return difference.beyond() <= 0 || (isWithin && difference.where().matches(places));
  }

  /** The reason that a comparison differs, if it is known. */
  static Optional<Explained> of(Comparison comparison) {
    return Arrays.stream(values()).filter(known -> known.explains(comparison)).findFirst();
  }
}
