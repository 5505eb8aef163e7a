package dryfloor.analysis.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import java.util.List;
import java.util.Locale;

/** Where the water is, in the units that a person would read off. */
public final class WaterAssert {

  private final String what;
  private final double value;

  private WaterAssert(String what, double value) {
    this.what = what;
    this.value = value;
  }

  /** Final depth of water in a vessel, in millimetres above its inside bottom. */
  public static WaterAssert assertLevel(Outcome outcome, String vessel) {
    Outcome.VesselOutcome found = vessel(outcome, vessel);
    return new WaterAssert("mm in " + vessel, 1000 * (found.levelAfter() - found.bottom()));
  }

  /** Water that left a vessel for a place where it should not be (L). */
  public static WaterAssert assertSpilled(Outcome outcome, String vessel) {
    return new WaterAssert("L spilled from " + vessel, 1000 * vessel(outcome, vessel).spilled());
  }

  /** Water that stands in a vessel at the end (L). */
  public static WaterAssert assertLitresIn(Outcome outcome, String vessel) {
    return new WaterAssert("L in " + vessel, 1000 * vessel(outcome, vessel).volumeAfter());
  }

  /** Water that stands on a floor at the end (L). */
  public static WaterAssert assertLitresOn(Outcome outcome, String floor) {
    return new WaterAssert("L on " + floor, 1000 * floor(outcome, floor).volume());
  }

  /** Water that reached a floor in all (L). */
  public static WaterAssert assertReached(Outcome outcome, String floor) {
    return new WaterAssert("L that reached " + floor, 1000 * floor(outcome, floor).received());
  }

  public static WaterAssert assertBeyond(Outcome outcome) {
    return new WaterAssert("L beyond the drawing", 1000 * outcome.beyond());
  }

  public static WaterAssert assertDrained(Outcome outcome, String drain) {
    return new WaterAssert("L to " + drain, 1000 * passed(outcome.drained(), drain));
  }

  public static WaterAssert assertSupplied(Outcome outcome, String supply) {
    return new WaterAssert("L from " + supply, 1000 * passed(outcome.supplied(), supply));
  }

  /** Final salinity of a vessel (g/kg). */
  public static WaterAssert assertSalinity(Outcome outcome, String vessel) {
    return new WaterAssert("g/kg in " + vessel, vessel(outcome, vessel).salinityAfter());
  }

  /** Water that went over a path from one place to another (m³). */
  public static double carried(Outcome outcome, String path, String from, String to) {
    return outcome.ledger().entries().stream()
        .filter(e -> e.path().equals(path) && e.from().equals(from) && e.to().equals(to))
        .mapToDouble(Ledger.Entry::volume)
        .sum();
  }

  public static Outcome.VesselOutcome vessel(Outcome outcome, String id) {
    return outcome.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
  }

  public static Outcome.FloorOutcome floor(Outcome outcome, String id) {
    return outcome.floors().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static double passed(List<Outcome.Passed> all, String id) {
    return all.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow().volume();
  }

  /** The project's promise for a final level: 0.5 mm against a calculation by hand. */
  public void isCloseToMillimetres(double expected) {
    assertThat(value).as(what).isCloseTo(expected, within(0.5));
  }

  public void isWithin(double tolerance, double expected) {
    assertThat(value).as(what).isCloseTo(expected, within(tolerance));
  }

  /** Litres to 0.1 % or 1 mL. */
  public void isCloseToLitres(double expected) {
    assertThat(value).as(what).isCloseTo(expected, within(Math.max(1e-3 * expected, 1e-3)));
  }

  public void isNothing() {
    assertThat(value).as(what).isCloseTo(0, within(1e-3));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.6f %s", value, what);
  }
}
