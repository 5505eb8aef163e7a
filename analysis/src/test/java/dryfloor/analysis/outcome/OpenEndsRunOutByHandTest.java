package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertDrained;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import dryfloor.model.element.Control.LevelSwitch.Action;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What is left in pipes with an open end: nothing that is free to fall, be it in a pipe that lies
 * level or beyond a crest.
 */
class OpenEndsRunOutByHandTest {

  /**
   * A tank of 1 m² runs out through a bar that lies level at its bottom, 5 m long and 60 mm wide,
   * and from there down a pipe of 40 mm, 1 m long, into a vat of 1 m². The tank, 50 mm over the
   * opening at 100 mm, loses these 50 L; the bar holds 2827.4 mm² · 5 m = 14.137 L and the pipe
   * 1256.6 mm² · 1 m = 1.257 L, full as long as the tank runs. Once air has come to the bar all of
   * it is in the vat: 100 + 50 + 14.137 + 1.257 = 165.394 L.
   */
  @Test
  void aBarThatLiesLevelRunsEmpty() {
    Installation drawing =
        Plan.of("A tank over a vat")
            .storey("ground", 0)
            .floor("hall", 100)
            .vessel("tank", box(1, 1, 0.5), v -> v.in("hall").raised(2).level(0.15).fresh())
            .vessel("vat", box(1, 1, 0.5), v -> v.in("hall").level(0.1).fresh())
            .junction("end-of-bar", 2.1)
            .run("bar", r -> r.from("tank", 0.1).toJunction("end-of-bar").bore(0.06).length(5))
            .run("down", r -> r.fromJunction("end-of-bar").to("vat", 0.4).bore(0.04).length(1))
            .draw();

    Outcome outcome = Trial.normal(drawing);

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "tank").isWithin(0.5, 100);
    assertLevel(outcome, "vat").isWithin(0.5, 165.4);
  }

  /**
   * A pump pit of 1 m², 300 mm deep, its pump at rest. Its line of 40 mm rises 3 m from 100 mm to a
   * crest at 1.5 m and falls 1 m to an open end at 1.2 m. The check valve keeps what stands before
   * the crest, 1256.6 mm² · 3 m = 3.770 L; the 1.257 L beyond ran out of the end when the pump last
   * stopped. Once the check valve lets go, the line keeps what stands below the pit's level z: 1000
   * (z − 0.3) = 3.770 − 3.770 (z − 0.1)/1.4, so z = 303.22 mm, and nothing comes out above.
   */
  @Test
  void nothingIsLeftBeyondTheCrestOfAPumpLine() {
    Installation drawing =
        Plan.of("A pit and its pump")
            .storey("ground", 0)
            .floor("hall", 100)
            .vessel("pit", box(1, 1, 0.5), v -> v.in("hall").level(0.3).fresh())
            .drain("yard-drain", 1.2)
            .circuit("sockets")
            .run(
                "discharge",
                r ->
                    r.from("pit", 0.1)
                        .toDrain("yard-drain")
                        .bore(0.04)
                        .length(4)
                        .by(1.5, 3)
                        .pump("pit-pump", 0.1, "sockets", 0, 7, 2, 4)
                        .checkValve("pit-check", 0.5))
            .levelSwitch("pit-switch", "pit", 0.2, 0.4, Action.EMPTIES, "pit-pump")
            .draw();

    Outcome outcome = Trial.changing(drawing, new Effect.CheckValveHeldOpen("pit-check"));

    assertLevel(outcome, "pit").isCloseToMillimetres(303.22);
    assertDrained(outcome, "yard-drain").isNothing();
  }

  /**
   * A pump lifts from a sump of 1 m² through 2.5 m of 40 mm, 100 mm up to 2 m, into a ring of 60
   * mm, 4 m long, that lies level between two junctions; from each a hose of 20 mm, 1 m long, leads
   * down into a tray of 1 m² whose edge is at 300 mm and over which all of it falls back. When the
   * pump stops, the ring, 2827.4 mm² · 4 m = 11.310 L, runs out though it leads from air to air at
   * one height; so do the hoses, twice 314.16 mm² · 1 m = 0.628 L, and the riser down to the level
   * z in the sump: it holds 1256.6 mm² · 2.5 m = 3.142 L, of which 3.142 · (z − 0.1)/1.9 stay. The
   * tray gives what stood above its edge.
   */
  @Test
  void aLevelRingRunsOutWhenItsPumpStops() {
    Installation drawing =
        Plan.of("A ring over a tray")
            .storey("ground", 0)
            .floor("hall", 100)
            .circuit("main")
            .vessel("tray", box(1, 1, 0.5), v -> v.in("hall").raised(1).level(0.3).fresh())
            .vessel("sump", box(1, 1, 0.8), v -> v.in("hall").level(0.4).fresh())
            .weir("edge", "tray", "sump", 0.3, 0.5)
            .junction("near", 2)
            .junction("far", 2)
            .run(
                "riser",
                r ->
                    r.from("sump", 0.1)
                        .toJunction("near")
                        .bore(0.04)
                        .length(2.5)
                        .pump("pump", 0.2, "main", 0, 4, 0.5, 3, 1, 0))
            .run("ring", r -> r.fromJunction("near").toJunction("far").bore(0.06).length(4))
            .run("left", r -> r.fromJunction("near").to("tray", 0.4).bore(0.02).length(1))
            .run("right", r -> r.fromJunction("far").to("tray", 0.45).bore(0.02).length(1))
            .draw();
    Outcome normal = Trial.normal(drawing);
    double before = level(normal, "sump");

    Outcome after = Trial.after(drawing, new Failure.CircuitTrips("main"));

    double falls = 0.011310 + 2 * 0.000314 + 0.003142 + level(normal, "tray") - 1.3;
    double staysInRiser = 0.003142 / 1.9;
    double sump = (before + falls + staysInRiser * 0.1) / (1 + staysInRiser);
    assertLevel(after, "sump").isCloseToMillimetres(sump * 1e3);
    assertLevel(after, "tray").isCloseToMillimetres(300);
  }

  /**
   * A line of 40 mm, 3 m up to a crest and 1 m down into a display, comes apart at its pump. What
   * stood beyond the crest runs into the display as it always would, at most 1256.6 mm² · 1 m =
   * 1.257 L; only what leaves the open end has left where the line came apart.
   */
  @Test
  void whatRunsOutOfTheGoodEndOfABrokenLineGoesThroughIt() {
    Installation drawing =
        Plan.of("A line over a rim")
            .storey("ground", 0)
            .floor("hall", 100)
            .circuit("main")
            .vessel("display", box(1, 1, 0.5), v -> v.in("hall").raised(2).level(0.3).fresh())
            .vessel("sump", box(1, 1, 0.8), v -> v.in("hall").level(0.4).fresh())
            .weir("edge", "display", "sump", 0.3, 0.5)
            .run(
                "line",
                r ->
                    r.from("sump", 0.1)
                        .to("display", 0.4)
                        .bore(0.04)
                        .length(4)
                        .by(3.1, 3)
                        .pump("pump", 0.1, "main", 0, 5, 0.5, 4, 1, 0)
                        .checkValve("check", 0.5))
            .draw();

    Outcome outcome =
        Trial.changing(
            drawing, new Effect.RunParted("line", 0.2, 0.15, OptionalInt.empty(), "hall"));

    assertThat(ways(outcome, "line", "display")).containsExactly(Ledger.Way.RUN);
    assertThat(ways(outcome, "line", "hall")).containsExactly(Ledger.Way.PARTED);
  }

  /** How the water went that a run gave to a place. */
  private static Set<Ledger.Way> ways(Outcome outcome, String run, String to) {
    return outcome.ledger().entries().stream()
        .filter(entry -> entry.path().equals(run) && entry.to().equals(to))
        .map(Ledger.Entry::way)
        .collect(Collectors.toSet());
  }

  /** Elevation of the level (m). */
  private static double level(Outcome outcome, String vessel) {
    return outcome.vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .findFirst()
        .orElseThrow()
        .levelAfter();
  }
}
