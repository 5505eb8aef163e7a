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
      "gully|plant-room|hall|beyond",
      0.5e-3,
      0.04),

  BURST_IN_A_BAY(
      "**A burst in a bay.** When the wall of a vessel fails that stands in a low bay or bund, the "
          + "water outside soon stands as high as that inside and holds it back; the plain simulator "
          + "lets all of it out as if nothing stood there. What runs over the edge of the bay in the "
          + "first ten seconds differs by up to 1 %.",
      "research-rack-room/.*|coral-nursery/.*",
      "wall-fails[.](filter-sump|trench)",
      "collection-sump|rack-room|laboratory-drain|pit-floor|beyond",
      4e-3,
      0.01),

  DEPTH_OVER_A_DRIP(
      "**Depth over a drip.** No law of either says how deep water runs over a small hole in a drain "
          + "that falls and is never full. In the plain simulator all that passes can press on the "
          + "hole; in the engine the hole sees what stands in the lower leg. Both wet the floor; how "
          + "much drips in a day differs by a factor of up to five, and neither is to be relied on.",
      "coral-nursery/.*|tape-measure/.*",
      "drips-at-lowest-point[.](header-overflow|raceway-drain-.|main-drain)",
      "drain-pit|sump-bay|sump|study",
      0.2,
      0.8),

  PHASE_OF_A_CYCLE(
      "**The phase of a cycle.** Where a drip makes the top-off come and go for days, both end "
          + "somewhere in a cycle of 15 L in which the collection sump swings by 20 mm, and what has "
          + "been supplied by then differs by a part of it.",
      "research-rack-room/.*",
      "joint-drips[.].*|drips-at-lowest-point[.].*",
      "house-purified|collection-sump",
      20e-3,
      0.1),

  PUMP_THAT_COMES_AND_GOES(
      "**A pump that comes and goes.** Each time the pit pump starts and stops, the filling and "
          + "emptying of its line differ by some hundredths of a litre; a dozen times make a third of a "
          + "litre in the pit.",
      "coral-nursery/.*",
      "parts-at-lowest-point[.](header-overflow|raceway-drain-.)|seam-leaks[.]trench",
      "drain-pit",
      2e-3,
      2e-3),

  TEE_THAT_GULPS(
      "**A tee that gulps.** A manifold that has come apart fills and takes air in turns while its "
          + "header drains; when it does so hangs on its last millimetres, and so does by which of its "
          + "pipes the water goes. The litres in all are alike, their shares differ by up to a tenth.",
      "coral-nursery/.*",
      "parts-at-lowest-point[.](manifold-bar|tub-fill)",
      "trench|beyond|packing-room",
      5e-3,
      0.1),

  WAY_OUT_OF_A_LEVEL_RING(
      "**The way out of a level ring.** When a ring that lies level runs out, its 3.5 L leave by the "
          + "hoses of one rack or another, one of which ends over the floor; which of them takes how "
          + "much of the last litre neither knows.",
      "research-rack-room/.*",
      "(seam-leaks|wall-fails)[.]rack-[bc]-.*",
      "collection-sump|laboratory-drain|rack-room",
      1e-3,
      3e-3),

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
