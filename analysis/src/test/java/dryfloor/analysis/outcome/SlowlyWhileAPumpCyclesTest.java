package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static dryfloor.analysis.installation.WaterAssert.vessel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.element.Control.LevelSwitch.Action;
import dryfloor.model.element.Run;
import org.junit.jupiter.api.Test;

/**
 * A pump keeps a vat between two marks, once in a minute or so, for hours. That alone would repeat
 * itself; but meanwhile 10 mL/s run into a gutter, and over its lip into an empty downpipe that is
 * shut at its foot.
 */
class SlowlyWhileAPumpCyclesTest {

  private static final double INFLOW = 1e-5;
  private static final double TWO_HOURS = 7200;

  /**
   *
   *
   * <pre>
   * 20 m of 32 mm hold 804.2 mm² · 20 m = 16.08 L: full after 1608 s. From then on the gutter of
   * 0.2 m² rises from its lip to its rim, 0.2 m higher: 40 L in 4000 s. It runs over after 5608 s,
   * and 15.92 L more have come when two hours are over, less the film that stands over the rim.
   * </pre>
   */
  @Test
  void aPipeThatFillsForHoursSpillsInTheEnd() {
    Outcome outcome = Trial.normal(house(20).draw());

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(Trial.timeOf(outcome, What.SPILLS, "gutter")).isCloseTo(5608, within(60.0));
    assertReached(outcome, "hall").isWithin(0.8, 15.92);
  }

  /** Ten times as long, it holds 160.8 L: 72 L are in it when somebody comes, and all is dry. */
  @Test
  void aLongerPipeIsNotYetFull() {
    Outcome outcome = Trial.normal(house(200).draw());

    double inPipe =
        outcome.ledger().standing().stream()
            .filter(standing -> standing.id().equals("downpipe"))
            .mapToDouble(Ledger.Standing::after)
            .sum();
    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertThat(inPipe).isCloseTo(INFLOW * TWO_HOURS, within(1e-3));
    assertLevel(outcome, "gutter").isWithin(3, 100);
  }

  /**
   * 1.5 µL/s (5.4 mL an hour) into 0.2 m²: 54 µm in two hours, and at no time is it higher than at
   * the end.
   */
  @Test
  void aLevelThatCreepsUpStandsHighestAtTheEnd() {
    Outcome outcome = Trial.normal(house(20, 1.5e-9, 0.05).draw());

    Outcome.VesselOutcome gutter = vessel(outcome, "gutter");
    assertThat(gutter.levelAfter() - gutter.levelBefore()).isCloseTo(54e-6, within(1e-6));
    assertThat(gutter.highestLevel()).isEqualTo(gutter.levelAfter());
    assertThat(gutter.highestTime()).isEqualTo(TWO_HOURS);
  }

  /** The vat's mean level stays, and so does its peak: it is never above its upper mark. */
  @Test
  void aLevelThatGoesUpAndDownPeaksWhereItAlwaysDid() {
    Outcome outcome = Trial.normal(house(20, 1.5e-9, 0.05).draw());

    Outcome.VesselOutcome vat = vessel(outcome, "vat");
    assertThat(vat.highestLevel() - vat.bottom()).isCloseTo(0.2, within(2e-5));
  }

  private static Plan house(double downpipe) {
    return house(downpipe, INFLOW, 0.1);
  }

  private static Plan house(double downpipe, double inflow, double gutterLevel) {
    return Plan.of("Gutter with a shut downpipe")
        .away(TWO_HOURS)
        .storey("ground", 0)
        .floor("hall", 100)
        .circuit("main")
        .source("tap", 3, inflow)
        .vessel(
            "gutter", box(0.5, 0.4, 0.3), v -> v.in("hall").raised(2).level(gutterLevel).fresh())
        .vessel("store", box(1, 1, 0.8), v -> v.in("hall").level(0.5).fresh())
        .vessel("vat", box(1, 0.5, 0.5), v -> v.in("hall").raised(1).level(0.2).fresh())
        .run("inlet", r -> r.fromSupply("tap").to("gutter", 0.29).length(1).bore(0.01))
        .run(
            "downpipe",
            r ->
                r.fromLip("gutter", 0.1)
                    .to("store", 0.7)
                    .length(downpipe)
                    .bore(0.032)
                    .duty(Run.Duty.EMERGENCY)
                    .valve("gate", downpipe, 0))
        .run("weep", r -> r.from("vat", 0.02).to("store", 0.7).length(1).bore(0.006))
        .run(
            "fill",
            r ->
                r.from("store", 0.02)
                    .to("vat", 0.45)
                    .length(3)
                    .bore(0.02)
                    .dosingPump("pump", 0.2, "main", 0, 1000, 0.5, 999, 0.5001, 0))
        .levelSwitch("keeper", "vat", 0.196, 0.2, Action.FILLS, "pump");
  }
}
