package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertBeyond;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertLitresIn;
import static dryfloor.analysis.installation.WaterAssert.assertLitresOn;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/** Seams, bursts and drips, and where their water goes over basins, floors and sills. */
class LeaksAndFloorsTest {

  /** 800 L of fresh water in a vat of 1 m² that stands on whatever is named. */
  private static Plan vatOn(Plan plan, String ground, double raised) {
    return plan.vessel(
        "vat", box(1.25, 0.8, 1), v -> v.in(ground).raised(raised).level(0.8).fresh());
  }

  @Test
  void whatRanEmptyAtOnceIsNotWhatStillMovesHalfAnHourLater() {
    // 800 L on 20 m² stand 40 mm deep and run off over 1 m of sill. With some 1.7 m^0.5/s for the
    // weir, dh/dt = -0.085 h^1.5: after half an hour 0.2 mm are left over the sill and fall by
    // nearly 1 mm an hour. The vat, which fell by 800 mm in that time, has long been empty.
    Installation installation =
        vatOn(
                Plan.of("One room")
                    .away(1800)
                    .storey("ground", 0)
                    .floor("room", 20, 0.002, Plan.BEYOND),
                "room",
                0.03)
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.WallFails("vat"));

    assertThat(outcome.ending()).isInstanceOf(Ending.StillMoving.class);
    Ending.StillMoving moving = (Ending.StillMoving) outcome.ending();
    assertThat(moving.place()).isEqualTo("room");
    assertThat(moving.speed() * 3600).isBetween(-2e-3, -0.4e-3);
  }

  /**
   * A tub of 2 m² that stands on a floor of 10 m² loses its wall with 600 L in it. They stand 60 mm
   * deep all over the floor, where the tub stood too, not 600 / (10 + 2) = 50 mm.
   */
  @Test
  void whatABrokenTubHeldCoversTheFloorUnderItToo() {
    Installation installation =
        Plan.of("A deep room")
            .storey("ground", 0)
            .floor("room", 10, 0.1, Plan.BEYOND)
            .vessel("tub", box(2, 1, 0.8), v -> v.in("room").level(0.3).fresh())
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.WallFails("tub"));

    assertThat(outcome.floors().getFirst().depth()).isCloseTo(0.060, within(1e-4));
    assertLevel(outcome, "tub").isCloseToMillimetres(60);
  }

  /**
   * A tub of 4 m² can't stand on a floor drawn with 3 m²: that area can only have been meant beside
   * it. Its 600 L then stand 600 / (3 + 4) = 85.7 mm deep.
   */
  @Test
  void aFloorSmallerThanTheBrokenTubLiesBesideIt() {
    Installation installation =
        Plan.of("A narrow room")
            .storey("ground", 0)
            .floor("room", 3, 0.2, Plan.BEYOND)
            .vessel("tub", box(2, 2, 0.8), v -> v.in("room").level(0.15).fresh())
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.WallFails("tub"));

    assertThat(outcome.floors().getFirst().depth()).isCloseTo(0.6 / 7, within(1e-4));
  }

  @Test
  void aSeamEmptiesTheVatOntoTheFloorAndDownTheStair() {
    // 800 L on 10 m² behind a sill of 20 mm: 200 L stay upstairs, 600 L go down the stair, where
    // 25 m² behind a sill of 20 mm keep 500 L and 100 L leave the drawing. The vat stands on the
    // floor itself, raised by 30 mm, and loses all of it.
    Installation installation =
        vatOn(
                Plan.of("Two storeys")
                    .storey("ground", 0)
                    .floor("cellar", 25, 0.02, Plan.BEYOND)
                    .storey("upper", 3)
                    .floor("hall", 10, 0.02, "cellar"),
                "hall",
                0.03)
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.SeamLeaks("vat"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLevel(outcome, "vat").isWithin(0.1, 0);
    assertReached(outcome, "hall").isCloseToLitres(800);
    assertLitresOn(outcome, "hall").isCloseToLitres(200);
    assertReached(outcome, "cellar").isCloseToLitres(600);
    assertLitresOn(outcome, "cellar").isCloseToLitres(500);
    assertBeyond(outcome).isCloseToLitres(100);
  }

  @Test
  void aWallThatFailsEndsAsTheSeamDoesButSooner() {
    Installation installation =
        vatOn(Plan.of("Hall").storey("ground", 0).floor("hall", 100), "hall", 0.03).draw();

    Outcome seam = Trial.after(installation, new Failure.SeamLeaks("vat"));
    Outcome wall = Trial.after(installation, new Failure.WallFails("vat"));

    assertLitresOn(seam, "hall").isCloseToLitres(800);
    assertLitresOn(wall, "hall").isCloseToLitres(800);
    assertThat(((Ending.AtRest) wall.ending()).time()).isLessThan(60);
    assertThat(((Ending.AtRest) seam.ending()).time()).isGreaterThan(3600);
  }

  @Test
  void nestedBasinsOverflowOneIntoTheNext() {
    // Vat, inner and outer basin stand in one another, 10 mm above each other's bottom. Outlines
    // take no room of their own, so where all three are flooded their water is 4 m² times one
    // level w: 4 w = 0.8 m³, w = 200 mm, over the inner rim at 110 mm and under the outer's at
    // 210 mm.
    Installation installation =
        vatOn(
                Plan.of("Nested")
                    .storey("ground", 0)
                    .floor("room", 100)
                    .basin("outer", box(2, 2, 0.21), "room")
                    .vessel(
                        "inner",
                        box(2, 1, 0.1),
                        v ->
                            v.in("outer")
                                .raised(0.01)
                                .level(0)
                                .role(dryfloor.model.element.Vessel.Role.BASIN)),
                "inner",
                0.01)
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.SeamLeaks("vat"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.CAUGHT);
    assertLevel(outcome, "outer").isCloseToMillimetres(200);
    assertLevel(outcome, "inner").isCloseToMillimetres(190);
    assertLevel(outcome, "vat").isCloseToMillimetres(180);
    assertLitresIn(outcome, "outer").isCloseToLitres(4 * 200 - 2 * 190);
    assertLitresIn(outcome, "inner").isCloseToLitres(2 * 190 - 180);
    assertLitresIn(outcome, "vat").isCloseToLitres(180);
  }

  @Test
  void aFullBundFloodsTheLowVesselThatStandsInIt() {
    // 800 L burst into a bund of 4 m² with a rim of 300 mm, in which a bucket of 1 m² and 150 mm
    // stands. Outlines take no room: until the bucket's rim is reached the bund takes 4 · 150 =
    // 600 L; of the other 200 L the bucket takes 150 L to its rim, and the rest raises both:
    // 4 m² times a level w = 800 L, so w = 200 mm, and 200 L are in the bucket.
    Installation installation =
        vatOn(
                Plan.of("Bund")
                    .storey("ground", 0)
                    .floor("room", 100)
                    .basin("bund", box(2, 2, 0.3), "room")
                    .vessel("bucket", box(1, 1, 0.15), v -> v.in("bund").level(0)),
                "bund",
                0.01)
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.WallFails("vat"));

    StoryEvent flooded =
        outcome.story().stream()
            .filter(event -> event.what() == StoryEvent.What.FLOODED)
            .filter(event -> event.subject().equals("bucket"))
            .findFirst()
            .orElseThrow();
    assertThat(flooded.other()).isEqualTo("bund");
    assertLitresIn(outcome, "bucket").isCloseToLitres(200);
    assertThat(flooded.volume().orElseThrow() * 1000).isCloseTo(200, withPercentage(1));
    assertThat(outcome.story())
        .noneMatch(e -> e.what() == StoryEvent.What.SPILLS && e.other().equals("bucket"));
  }

  @Test
  void aDripForTheWholeWeekendTakesFewSteps() {
    // 1 mm² (FailureSettings) in a run that hangs from the vat to a shut tap, 0.2 m below it.
    Installation installation =
        vatOn(Plan.of("Drip").away(72 * 3600).storey("ground", 0).floor("hall", 100), "hall", 0.5)
            .drain("sewer", -1)
            .run(
                "tail",
                r ->
                    r.from("vat", 0)
                        .toDrain("sewer")
                        .by(0.3, 0.2)
                        .valve("tap", 1, 0)
                        .joint("union", 0.2, 0.3, "hall")
                        .length(1.6))
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.JointDrips("tail", "union"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(outcome.trajectory().moments()).isLessThan(400);
    // dh/dt = −Cd a √(2gh)/A with h over the hole, 1.0 m at first, A = 1 m²:
    // √h = 1 − Cd a √(2g) t/(2A) = 0.6499 after 72 h, 222 mm in the vat.
    double root = 1 - 259_200 * 0.61e-6 * Math.sqrt(2 * 9.80665) / 2;
    assertLevel(outcome, "vat").isCloseToMillimetres(1000 * (root * root - 0.2));
  }

  @Test
  void anOutletThatSinksInItsVesselSpillsNothing() {
    Outcome outcome =
        Trial.after(
            DisplayAboveSump.asDrawn(), new Failure.OutletSinks("return", Failure.End.SECOND));

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertThat(outcome.firstSpill()).isEmpty();
    assertThat(outcome.vessels()).allMatch(vessel -> vessel.spilled() == 0);
    assertThat(outcome.ledger().entries())
        .filteredOn(entry -> entry.path().equals("return"))
        .isNotEmpty()
        .allMatch(entry -> entry.way() == Ledger.Way.RUN);
    assertThat(outcome.story()).noneMatch(event -> event.what() == StoryEvent.What.LEAKS);
  }

  @Test
  void anEndThatSlipsOutOfItsVesselSpills() {
    Outcome outcome =
        Trial.after(
            DisplayAboveSump.asDrawn(), new Failure.EndSlipsOut("return", Failure.End.SECOND));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(outcome.firstSpill()).isPresent();
    assertThat(Trial.happened(outcome, StoryEvent.What.LEAKS, "return")).isTrue();
  }

  @Test
  void aBurstReturnLineEmptiesTheChamberAndTheDisplayDownToTheBreak() {
    // The union at 1.0 m parts. The pump throws the chamber down to its inlet onto the plant-room
    // floor, and the display runs back to its siphon break: total 980.506 L (PowerLossByHand).
    // Left in place (L): display 737.261 as after a power loss, what stands in the upper piece
    // nothing but the short leg's 0.028; sump 120.000; chamber at 50 mm 15.000; skimmer 6.804; the
    // lower piece, 0.5 m + up to the union at 1.0 m: (0.5 + 0.93 · 4.5/4.48) m · 0.804248 = 1.153.
    // The pump can push its column to the union but not beyond its inlet's water: as long as it
    // runs with a dry inlet the column stays. So 980.506 − 880.218 = 100.288 L are on the floor.
    Installation installation =
        new DisplayAboveSump()
            .returnWith(r -> r.joint("union", 0.5 + 0.93 * 4.5 / 4.48, 1.0, "plant-room"))
            .plan()
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.JointParts("return", "union"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLevel(outcome, "display").isCloseToMillimetres(585.105);
    assertLevel(outcome, "chamber").isCloseToMillimetres(50);
    assertLevel(outcome, "sump").isCloseToMillimetres(300);
    assertThat(outcome.onFloors() * 1000).isCloseTo(100.288, withPercentage(0.1));
  }

  /** How deep it runs over a hole of a square millimetre no law says; a full line has a head. */
  @Test
  void howMuchDripsFromAPartlyFullDrainIsToldToBeUnknown() {
    Installation drawing = Shipped.named("tape-measure/as-drawn");

    Outcome drain = Trial.after(drawing, new Failure.RunDripsAtLowestPoint("main-drain"));
    Outcome line = Trial.after(drawing, new Failure.RunDripsAtLowestPoint("return-line"));

    assertThat(drain.notes()).contains(new Note.DripsWhilePartlyFull("main-drain"));
    assertThat(line.notes()).noneMatch(Note.DripsWhilePartlyFull.class::isInstance);
  }
}
