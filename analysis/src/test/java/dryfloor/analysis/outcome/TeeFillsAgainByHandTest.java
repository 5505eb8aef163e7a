package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/**
 * A tee above all vessels, which empties when its pump stops and is full again when it runs.
 *
 * <pre>
 *   upper     1.0 · 0.5 m², over whose edge at 300 mm all that is lifted falls back
 *   lower     0.5 · 0.4 m², from which a pump lifts 1 m above the upper one
 *   tee       where the riser of 40 mm parts into two hoses that end above the water of the upper
 * </pre>
 */
class TeeFillsAgainByHandTest {

  private static Installation manifold() {
    return Plan.of("Manifold above all")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .vessel("upper", box(1, 0.5, 0.5), v -> v.in("room").raised(1).level(0.3))
        .vessel("lower", box(0.5, 0.4, 0.6), v -> v.in("room").level(0.4))
        .weir("edge", "upper", "lower", 0.3, 0.3)
        .junction("tee", 2)
        .run(
            "riser",
            r ->
                r.from("lower", 0.1)
                    .toJunction("tee")
                    .bore(0.04)
                    .length(2.5)
                    .pump("pump", 0.2, "main", 0, 4, 0.5, 3, 1, 0))
        .run("left", r -> r.fromJunction("tee").to("upper", 0.4).bore(0.02).length(1))
        .run("right", r -> r.fromJunction("tee").to("upper", 0.45).bore(0.02).length(1))
        .draw();
  }

  /**
   * A full tee is full once: all its water is that of its pipes. After the outage the pipes are as
   * full as before, and the flow over the edge is what it was; so there is as much in each vessel.
   * Had a pool of its own stayed in the tee, 80 mm by 80 mm and 40 mm deep, the lower vessel would
   * lack 0.256 L, or 1.3 mm.
   */
  @Test
  void asMuchWaterIsBelowAfterAnOutageAsBefore() {
    Installation manifold = manifold();
    Outcome normal = Trial.normal(manifold);

    Outcome after = Trial.after(manifold, new Failure.CircuitTripsForAWhile("main"));

    assertThat(Trial.happened(after, What.RUN_PRIMES, "left")).isTrue();
    assertThat(after.vessels()).hasSameSizeAs(normal.vessels());
    for (int i = 0; i < after.vessels().size(); i++) {
      assertThat(after.vessels().get(i).levelAfter())
          .as(after.vessels().get(i).id())
          .isCloseTo(normal.vessels().get(i).levelAfter(), within(1e-4));
    }
  }

  /**
   * The same where a header above feeds two tees that a bar joins: while it lies empty the tees
   * drain, and water from the header fills them from above, so that no pipe there has room for what
   * stood in their pools. They would keep 164 mm by 164 mm, 57 mm deep, and lack 1.5 L below each.
   */
  @Test
  void teesBelowAHeaderKeepNoPoolEither() {
    Installation manifold =
        Plan.of("Header over a manifold")
            .storey("ground", 0)
            .floor("room", 50)
            .circuit("main")
            .vessel("header", box(0.5, 0.5, 0.6), v -> v.in("room").raised(2.5).level(0.3))
            .vessel("upper", box(1, 0.5, 0.5), v -> v.in("room").raised(1).level(0.3))
            .vessel("lower", box(1, 0.5, 1), v -> v.in("room").level(0.6))
            .weir("edge", "upper", "lower", 0.3, 0.3)
            .weir("header-edge", "header", "lower", 0.5, 0.3)
            .junction("near", 2)
            .junction("far", 2)
            .run(
                "riser",
                r ->
                    r.from("lower", 0.1)
                        .to("header", 0.55)
                        .bore(0.05)
                        .length(4)
                        .pump("pump", 0.2, "main", 0, 6, 2, 4))
            .run("feed", r -> r.from("header", 0.06).toJunction("near").bore(0.07).length(2))
            .run("bar", r -> r.fromJunction("near").toJunction("far").bore(0.057).length(2))
            .run("left", r -> r.fromJunction("near").to("upper", 0.35).bore(0.02).length(1.5))
            .run("right", r -> r.fromJunction("far").to("upper", 0.35).bore(0.02).length(1.5))
            .draw();
    Outcome normal = Trial.normal(manifold);

    Outcome after = Trial.after(manifold, new Failure.CircuitTripsForAWhile("main"));

    assertThat(Trial.happened(after, What.RUN_EMPTIES, "bar")).isTrue();
    assertThat(after.vessels()).hasSameSizeAs(normal.vessels());
    for (int i = 0; i < after.vessels().size(); i++) {
      assertThat(after.vessels().get(i).levelAfter())
          .as(after.vessels().get(i).id())
          .isCloseTo(normal.vessels().get(i).levelAfter(), within(1e-4));
    }
  }
}
