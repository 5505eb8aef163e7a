package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertBeyond;
import static dryfloor.analysis.installation.WaterAssert.assertDrained;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertLitresIn;
import static dryfloor.analysis.installation.WaterAssert.assertLitresOn;
import static dryfloor.analysis.installation.WaterAssert.assertSpilled;
import static dryfloor.analysis.installation.WaterAssert.assertSupplied;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.ReservoirInABund;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/**
 * A reservoir filled from the mains through a float valve that sticks open, worked out by hand.
 *
 * <p>What the mains bring and what the reservoir has room for is worked out in {@link
 * ReservoirInABund}; here the reservoir mostly stands on the floor of the room.
 */
class MainsFillByHandTest {

  private static final double AWAY = ReservoirInABund.AWAY;
  private static final double FLOW = ReservoirInABund.INFLOW;

  private static final Failure STUCK = new Failure.FloatValveStuckOpen("float");

  @Test
  void aStuckFloatFloodsTheRoomForAsLongAsNobodyComes() {
    // All that came in less the headroom went over the rim, less the weir's own head on it:
    // 0.19 L/s over a rim of 3 m stand 1.4 mm high on 0.5 m²: 0.7 L.
    Outcome outcome = Trial.after(reservoirRoom().draw(), STUCK);

    double in = FLOW * AWAY * 1000;
    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(outcome.ending()).isInstanceOf(Ending.Continues.class);
    assertThat(((Ending.Continues) outcome.ending()).rate()).isCloseTo(FLOW, withPercentage(0.1));
    assertSupplied(outcome, "mains").isCloseToLitres(in);
    assertSpilled(outcome, "reservoir").isCloseToLitres(in - 100.7);
    // The room, 12 m² with a sill of 50 mm, keeps 600 L and the head over its sill; the rest is
    // beyond the drawing.
    double head = Math.pow(FLOW / (2.95245 * 0.61 * 0.9), 2 / 3.0);
    assertLitresOn(outcome, "room").isWithin(6, 600 + 12_000 * head);
    assertBeyond(outcome).isCloseToLitres(in - 100.7 - 600 - 12_000 * head);
  }

  @Test
  void theFirstSpillComesWhenTheHeadroomIsFull() {
    Outcome outcome = Trial.after(reservoirRoom().draw(), STUCK);

    assertThat(outcome.firstSpill().orElseThrow()).isCloseTo(0.1 / FLOW, withPercentage(0.1));
    assertThat(outcome.firstWetFloor().orElseThrow()).isCloseTo(0.1 / FLOW, withPercentage(0.1));
  }

  @Test
  void aFloorDrainThatIsLargeEnoughKeepsUp() {
    // 40 mm at the floor: its lip alone takes 0.19 L/s at 9 mm, below the sill of 50 mm.
    Outcome outcome = Trial.after(withFloorDrain(0.04, AWAY), STUCK);

    double head = Math.pow(FLOW / (1.84 * Math.PI * 0.04), 2 / 3.0);
    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLitresOn(outcome, "room").isWithin(0.5, 12_000 * head);
    assertBeyond(outcome).isNothing();
    assertDrained(outcome, "sewer").isCloseToLitres(FLOW * AWAY * 1000 - 100.7 - 12_000 * head);
  }

  @Test
  void aFloorDrainThatIsTooSmallLetsTheRestOverTheSill() {
    // 10 mm runs full, 0.55 m of fall below the sill's water with ends 1.5 (PipeByHand): 0.15 L/s.
    // The rest goes over the sill, seen in the second half of the day when all is steady.
    // Churchill's friction differs from Colebrook's by up to 1 %, the pipe's flow by a fifth of
    // that, and the rest over the sill is a quarter of the pipe's flow: 1 %.
    Outcome day = Trial.after(withFloorDrain(0.01, AWAY), STUCK);
    Outcome half = Trial.after(withFloorDrain(0.01, AWAY / 2), STUCK);

    double drained = new PipeByHand(0.01, 0.5, 1.5e-6, 1.5, ReservoirInABund.VISCOSITY).flow(0.551);
    assertThat(day.verdict()).isEqualTo(Verdict.WET);
    assertThat((day.beyond() - half.beyond()) / (AWAY / 2))
        .isCloseTo(FLOW - drained, withPercentage(1));
    assertLitresOn(day, "room").isWithin(15, 610);
  }

  @Test
  void aBasinWithADrainKeepsTheFloorDry() {
    Installation installation = ReservoirInABund.drainedThrough(0.04).draw();

    Outcome outcome = Trial.after(installation, STUCK);

    assertThat(outcome.verdict()).isEqualTo(Verdict.CAUGHT);
    assertLitresOn(outcome, "room").isNothing();
    // With the basin's drain blocked as well the basin fills: 1.6 · 0.15 m³ less the 0.5 m² of the
    // reservoir from 10 mm up, 0.07 m³, hold 170 L to the rim; then the floor gets the rest.
    Outcome blocked = Trial.after(installation, new Failure.BasinDrainBlocked("bund-drain"), STUCK);
    assertThat(blocked.verdict()).isEqualTo(Verdict.WET);
    assertThat(blocked.firstWetFloor().orElseThrow())
        .isCloseTo((0.1 + 0.17) / FLOW, withPercentage(1));
  }

  @Test
  void theWorkingFloatHoldsItsLevel() {
    Outcome normal = Trial.normal(reservoirRoom().draw());

    assertLevel(normal, "reservoir").isCloseToMillimetres(800);
    assertLitresIn(normal, "reservoir").isCloseToLitres(400);
    assertSupplied(normal, "mains").isNothing();
  }

  private static Installation withFloorDrain(double bore, double away) {
    return reservoirRoom()
        .away(away)
        .drain("sewer", -0.5)
        .run("floor-drain", r -> r.fromLip("room", 0).toDrain("sewer").bore(bore).length(0.5))
        .draw();
  }

  private static Plan reservoirRoom() {
    return ReservoirInABund.room()
        .vessel("reservoir", box(1, 0.5, 1), v -> v.in("room").level(0.8).fresh())
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("reservoir", 1.25)
                    .bore(0.012)
                    .length(2)
                    .floatValve("float", 1, 0.4, "reservoir", 0.8, 0.05));
  }
}
