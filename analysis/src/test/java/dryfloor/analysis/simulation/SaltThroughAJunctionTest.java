package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.Plan;
import org.junit.jupiter.api.Test;

/** Water of 35 g/kg passes a full junction on its way from one tank into another of 34 g/kg. */
class SaltThroughAJunctionTest {

  private final SaltBooks books = new SaltBooks(tanks());

  /** A junction holds no water: taken for fresh, it would end a batch with every step. */
  @Test
  void whatPassesAJunctionIsNoFreshWater() {
    books.fill("first", 0.1, 35);
    books.fill("second", 0.1, 34);
    books.pass(0.001, "first", "tee", "second");
    books.salt.finish();
    double[] carriedSoFar = books.salts.clone();

    books.pass(0.0001, "first", "tee", "second");
    assertThat(books.salts).as("salt, while the batch goes on").isEqualTo(carriedSoFar);

    books.salt.finish();
    assertThat(books.salt("first")).isCloseTo(35 * (0.1 - 0.0011), within(1e-9));
    assertThat(books.salt("second")).isCloseTo(34 * 0.1 + 35 * 0.0011, within(1e-9));
  }

  private static Plan tanks() {
    return Plan.of("Two tanks and a junction")
        .storey("ground", 0)
        .floor("hall", 100)
        .vessel("first", box(1, 1, 0.3), v -> v.in("hall").raised(1).level(0.1))
        .vessel("second", box(1, 1, 0.3), v -> v.in("hall").level(0.1))
        .junction("tee", 0.8)
        .run("down", r -> r.from("first", 0.01).toJunction("tee").length(1).bore(0.03))
        .run("on", r -> r.fromJunction("tee").to("second", 0.05).length(1).bore(0.03))
        .run("aside", r -> r.fromJunction("tee").to("second", 0.06).length(1).bore(0.03));
  }
}
