package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Ledger.Way;
import java.util.List;
import org.assertj.core.api.AbstractListAssert;
import org.assertj.core.api.ObjectAssert;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

/**
 * The ledger as people think of it. Volumes in litres for the eye; the sums are in the comments.
 */
class MovementsTest {

  @Test
  void aLeakingRunIsOneWayAndItsLeakAnother() {
    assertMoved(
            run("main-drain", "box", "main-drain", 1000),
            run("main-drain", "main-drain", "main-drain", 990),
            run("main-drain", "main-drain", "sump", 10),
            run("main-drain", "main-drain", "sump", 970),
            entry("main-drain", Way.LEAK, "main-drain", "vat", 20))
        .containsExactly(
            tuple("box", "sump", Way.RUN, 980.0, 0.0), tuple("box", "vat", Way.LEAK, 20.0, 0.0));
  }

  @Test
  void waterThatOnlyGoesRoundAndRoundIsToldApartFromWhatIsLost() {
    // The pump lifts 500, the teeth pass 500, the drain brings 480 back: 20 went out of the leak.
    assertMoved(
            entry("teeth", Way.WEIR, "display", "box", 500),
            run("drain", "box", "sump", 480),
            entry("drain", Way.LEAK, "box", "vat", 20),
            run("return", "sump", "display", 500))
        .containsExactly(
            tuple("display", "box", Way.WEIR, 20.0, 480.0),
            tuple("box", "sump", Way.RUN, 0.0, 480.0),
            tuple("box", "vat", Way.LEAK, 20.0, 0.0),
            tuple("sump", "display", Way.RUN, 20.0, 480.0));
  }

  @Test
  void twoPipesSideBySideShareWhatGoesRoundByWhatTheyCarry() {
    assertMoved(
            run("left", "tee", "display", 300),
            run("right", "tee", "display", 100),
            run("back", "display", "tee", 200))
        .containsExactly(
            tuple("tee", "display", Way.RUN, 150.0, 150.0),
            tuple("tee", "display", Way.RUN, 50.0, 50.0),
            tuple("display", "tee", Way.RUN, 0.0, 200.0));
  }

  @Test
  void aLoopIntoTheSameVesselGoesRound() {
    assertMoved(run("canister-loop", "tank", "tank", 700))
        .containsExactly(tuple("tank", "tank", Way.RUN, 0.0, 700.0));
  }

  @Test
  void whatARunIsFilledWithAndGivesBackIsNotToldTwice() {
    // 16 in, 6 back to where it came from: 10 in it, of which 7 went on and 3 stay.
    assertMoved(
            run("top-off", "reservoir", "top-off", 16),
            run("top-off", "top-off", "reservoir", 6),
            run("top-off", "top-off", "sump", 7),
            run("top-off", "reservoir", "sump", 54))
        .containsExactly(tuple("reservoir", "sump", Way.RUN, 61.0, 0.0));
  }

  @Test
  void aRunThatOnlyEmptiesItselfGivesItsOwnWater() {
    assertMoved(run("riser", "riser", "sump", 5))
        .containsExactly(tuple("riser", "sump", Way.RUN, 5.0, 0.0));
  }

  @Test
  void waterTakenOutByHandDoesNotComeRoundAgain() {
    assertMoved(
            run("return", "sump", "display", 500),
            run("drain", "display", "sump", 490),
            entry("sump", Way.POURED, "outside", "sump", 60),
            entry("sump", Way.TAKEN, "sump", "outside", 60))
        .containsExactly(
            tuple("sump", "display", Way.RUN, 10.0, 490.0),
            tuple("display", "sump", Way.RUN, 0.0, 490.0),
            tuple("outside", "sump", Way.POURED, 60.0, 0.0),
            tuple("sump", "outside", Way.TAKEN, 60.0, 0.0));
  }

  @Test
  void aSpillIsNeverTakenForAPipe() {
    assertMoved(entry("sump", Way.RIM, "sump", "tray", 12))
        .containsExactly(tuple("sump", "tray", Way.RIM, 12.0, 0.0));
  }

  private static AbstractListAssert<?, List<? extends Tuple>, Tuple, ObjectAssert<Tuple>>
      assertMoved(Ledger.Entry... entries) {
    return assertThat(Movements.of(new Ledger(List.of(entries), List.of(), 3600, 0)))
        .extracting(Movement::from, Movement::to, Movement::way, Movement::moved, Movement::round);
  }

  private static Ledger.Entry run(String path, String from, String to, double volume) {
    return entry(path, Way.RUN, from, to, volume);
  }

  private static Ledger.Entry entry(String path, Way way, String from, String to, double volume) {
    return new Ledger.Entry(path, way, from, to, volume, 0);
  }
}
