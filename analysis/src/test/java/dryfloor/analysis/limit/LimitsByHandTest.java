package dryfloor.analysis.limit;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.TwoTanks;
import dryfloor.analysis.installation.WaterAssert;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Limits of {@link DisplayAboveSump} with its return outlet at 200 mm, when only the power can
 * fail, worked out by hand.
 *
 * <pre>
 * All the water, from the declared levels, with the chamber at c (L, m):
 *   display   1.8 · 0.7 · 602                                  758.520
 *   sump      0.8 · 0.5 · 310                                  124.000
 *   chamber                                                    300 c
 *   return    5.55 m · 0.804248                                  4.464
 *   skimmer   its pipe 1 m · 0.804248 and its body 6             6.804
 *   together                                                   893.788 + 300 c
 *
 * Upstairs stays, with the siphon break at b: the display down to the break, and the short leg of
 * the return, 0.55 m from its crest at 4.55 m to the outlet, which falls onto it:
 *   1260 b + 0.442
 *
 * Downstairs there is room for, up to the rims of sump and chamber at 500 mm:
 *   sump and chamber   700 · 0.5                               350.000
 *   long leg           0.402 + (0.5 − 0.05)/4.48 · 3.6191        0.766
 *   skimmer's pipe, full above 400 mm                            0.804
 *   together                                                   351.570
 * and in the tray, 2.0 · 0.8 · 60 = 96 L less what stands in it from 20 mm up:
 *   0.7 · 40 = 28                                               68.000
 * </pre>
 */
class LimitsByHandTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();
  private static final double DISPLAY = 3.8;
  private static final double CHAMBER = 0.02;

  private static Installation house(double siphonBreak, double chamber) {
    Installation drawn = new DisplayAboveSump().outletAt(0.2).plan().draw();
    Installation filled =
        new Choices(drawn).with(new Property.RunningLevel("chamber"), CHAMBER + chamber);
    Installation broken =
        new Choices(filled)
            .with(new Property.SiphonBreakHeight("siphon-break"), DISPLAY + siphonBreak);
    return OnlyWith.failures(broken, POWER_LOST::equals);
  }

  private static LimitAnswer.Found limit(Installation house, Property property)
      throws BaselineProblem {
    return (LimitAnswer.Found)
        Limits.of(house, List.of(property), Bounds.DRY_FLOORS, 1, Progress.NONE)
            .answers()
            .getFirst();
  }

  /**
   *
   *
   * <pre>
   * c = 291.9 mm: 981.358 − (1260 b + 0.442) = 351.570 + 68.000      b = 445.5 mm
   * </pre>
   */
  @Test
  void theLowestSafeSiphonBreak() throws BaselineProblem {
    LimitAnswer.Found found =
        limit(house(0.5, 0.2919), new Property.SiphonBreakHeight("siphon-break"));

    assertThat(found.today()).isPresent();
    SafeRange range = found.today().orElseThrow();
    assertThat(range.from() - DISPLAY).isCloseTo(0.446, within(1e-9));
    assertThat(range.below()).isEqualTo(new Decider.FloorWet(POWER_LOST));
    assertThat(range.above()).isEqualTo(new Decider.NotLookedAt());
    assertThat(found.mends()).isEmpty();
  }

  /**
   *
   *
   * <pre>
   * b = 420 mm, c = 291.9 mm: upstairs stay 529.642 L, so 981.358 − 529.642 − 351.570 = 100.146 L
   * come into the tray, which holds 28 L less than its outline says:      128.1 L
   * </pre>
   */
  @Test
  void theSmallestTrayThatMendsPowerLoss() throws BaselineProblem {
    LimitAnswer.Found found = limit(house(0.42, 0.2919), new Property.BasinSize("tray"));

    assertThat(found.mends()).hasSize(1);
    assertThat(found.mends().getFirst().failure()).isEqualTo(POWER_LOST);
    SafeRange range = found.mends().getFirst().ranges().getFirst();
    assertThat(range.from()).as("0.1 L, and 0.1 % of 100 L").isCloseTo(0.12815, within(1.5e-4));
    assertThat(range.below()).isEqualTo(new Decider.FloorWet(POWER_LOST));
  }

  /**
   *
   *
   * <pre>
   * b = 460.2 mm: upstairs stay 580.294 L, so below there may be 419.570 L and in all 999.864 L:
   *   893.788 + 300 c = 999.864                                          c = 353.6 mm
   * Running, display and sump are set by their edges, so nearly all that is filled in more than
   * today, (353 − 290) · 0.3 = 18.9 L, stands in the chamber in the end. But 62 mm less to lift
   * is 1.7 % more flow (pump and pipe lose some 6.8 m of head for each L/s more, at 0.55 L/s), and
   * that is 1.1 % more head over the lip, which the display's water tops by 16 mm, and the baffle:
   * 0.18 mm · 1.26 m² and a little in the sump, 0.26 L. So 18.64 L, 62.1 mm.
   * </pre>
   */
  @Test
  void theHighestSafeFillingOfTheChamberAndTheMarkOnItsGlass() throws BaselineProblem {
    LimitResult result =
        Limits.of(
            house(0.4602, 0.29),
            List.of(new Property.RunningLevel("chamber")),
            Bounds.DRY_FLOORS,
            1,
            Progress.NONE);

    LimitAnswer.Found found = (LimitAnswer.Found) result.answers().getFirst();
    SafeRange range = found.today().orElseThrow();
    assertThat(range.to() - CHAMBER).isCloseTo(0.353, within(1e-9));
    assertThat(range.above()).isEqualTo(new Decider.FloorWet(POWER_LOST));
    double today = WaterAssert.vessel(result.today().normal(), "chamber").levelAfter();
    assertThat(found.mark().orElseThrow() - today).isCloseTo(0.0621, within(5e-4));
    assertThat(Limits.highestRunningLevels(result.today(), 1, Progress.NONE))
        .as("the short way, for marks alone")
        .containsExactly(Map.entry("chamber", found.mark().orElseThrow()));
  }

  /**
   *
   *
   * <pre>
   * The display runs with V, some 779 L with what stands over its lip, and ends with 1260 b + 0.442 (L, m). A floor gets wet
   * with the break below 446 mm; to keep 80 % of its water it must sit at
   *   b = (0.8 V − 0.442)/1260                                             some 494.2 mm
   * </pre>
   */
  @Test
  void aSiphonBreakMustSitHigherWhereTheDisplayIsToKeepItsWater() throws BaselineProblem {
    Bounds keeping = new Bounds(OptionalDouble.of(0.8), Optional.empty());
    Property siphonBreak = new Property.SiphonBreakHeight("siphon-break");

    LimitResult result =
        Limits.of(house(0.5, 0.2919), List.of(siphonBreak), keeping, 1, Progress.NONE);

    SafeRange range = ((LimitAnswer.Found) result.answers().getFirst()).today().orElseThrow();
    double running = WaterAssert.vessel(result.today().normal(), "display").volumeAfter();
    double byHand = (0.8 * running * 1000 - 0.442) / 1260;
    assertThat(range.from() - DISPLAY).isBetween(byHand, byHand + 1.1e-3);
    assertThat(range.below())
        .isInstanceOfSatisfying(
            Decider.WaterLost.class,
            lost -> {
              assertThat(lost.vessel()).isEqualTo("display");
              assertThat(lost.share()).isBetween(0.798, 0.8);
            });
  }

  /** With the break at 450 mm no floor gets wet, but the display keeps 73 % of its water. */
  @Test
  void waterThatIsLostTodayIsMendedByTheSameHeightOfTheBreak() throws BaselineProblem {
    Bounds keeping = new Bounds(OptionalDouble.of(0.8), Optional.empty());
    Installation low = house(0.45, 0.2919);
    List<Property> siphonBreak = List.of(new Property.SiphonBreakHeight("siphon-break"));

    LimitResult dry = Limits.of(low, siphonBreak, Bounds.DRY_FLOORS, 1, Progress.NONE);
    LimitResult kept = Limits.of(low, siphonBreak, keeping, 1, Progress.NONE);

    assertThat(dry.wrongToday()).isEmpty();
    assertThat(kept.wrongToday()).containsExactly(POWER_LOST);
    SingleChange.Moved higher = (SingleChange.Moved) kept.remedies(POWER_LOST).getFirst().change();
    assertThat(higher.value() - DISPLAY).isCloseTo(0.495, within(1e-9));
  }

  @Test
  void aLevelThatAnEdgeSetsIsNotFreeToChoose() throws BaselineProblem {
    LimitResult result =
        Limits.of(
            house(0.5, 0.29),
            List.of(new Property.RunningLevel("display")),
            Bounds.DRY_FLOORS,
            1,
            Progress.NONE);

    assertThat(result.answers()).hasOnlyElementsOfType(LimitAnswer.HeldByOthers.class);
  }

  /**
   *
   *
   * <pre>
   * b = 450 mm: 981.358 − 567.442 − 351.570 = 62.346 L come into the tray. At a rim of h it holds
   * 1600 h − 700 (h − 0.02) = 900 h + 14                                    h = 53.7 mm
   * </pre>
   */
  @Test
  void bothSidesOfEveryLimitAreWhatTheyAreSaidToBe() throws BaselineProblem {
    Installation house = house(0.45, 0.2919);
    Property rim = new Property.Rim("tray");
    LimitAnswer.Found found = limit(house, rim);
    SafeRange range = found.today().orElseThrow();
    assertThat(range.from()).isCloseTo(0.054, within(1e-9));
    Choices choices = new Choices(house);

    Outcome normal = Inquiry.of(house, () -> false).normal();
    Today today = new Today(new SweepResult(house, normal, List.of()), Bounds.DRY_FLOORS);
    Trial at = Trial.of(choices, rim, range.from(), today, () -> false);
    Trial below = Trial.of(choices, rim, range.from() - 1e-3, today, () -> false);

    assertThat(at.firstWrong(at.failures())).isEmpty();
    assertThat(below.firstWrong(below.failures())).contains(range.below());
  }

  /**
   * The float calls for water below 150 mm in the chamber and is satisfied at 200 mm: whoever fills
   * it to 149 mm finds it at 200 mm, so that is no lower level to run at.
   */
  @Test
  void aLevelBelowTheFloatIsFilledUpAgain() throws BaselineProblem {
    Installation house = OnlyWith.failures(EverythingHouse.asDrawn(), POWER_LOST::equals);

    LimitAnswer.Found found = limit(house, new Property.RunningLevel("chamber"));

    SafeRange range = found.today().orElseThrow();
    assertThat(range.below()).isInstanceOf(Decider.FilledUpAgain.class);
    assertThat(((Decider.FilledUpAgain) range.below()).settled() - CHAMBER)
        .isCloseTo(0.2, within(0.005));
  }

  /**
   * The main drain's lip lies at 600 mm, that of the emergency drain at 630 mm. As deep as the
   * water runs over the first, so far below the second it must stay, or the spare carries what it
   * should be there for.
   */
  @Test
  void aMainDrainAsHighAsItsSpareIsNoMainDrain() throws BaselineProblem {
    Installation house = OnlyWith.failures(EverythingHouse.asDrawn(), POWER_LOST::equals);
    Outcome normal = Inquiry.of(house, Progress.NONE::cancelled).normal();
    double bottom = WaterAssert.vessel(normal, "display").bottom();
    double over = WaterAssert.vessel(normal, "display").levelAfter() - bottom - 0.6;

    LimitAnswer.Found found = limit(house, new Property.StandpipeLip("drain", Failure.End.FIRST));

    SafeRange range = found.today().orElseThrow();
    assertThat(range.above()).isEqualTo(new Decider.EmergencyDrainRuns("emergency"));
    assertThat(range.to() - bottom).isCloseTo(0.63 - over, within(0.002));
  }

  /** The sump of {@link TwoTanks} runs below the 300 mm it is filled to; above, an inlet is dry. */
  @Test
  void anInletAboveTheWaterIsNoInlet() throws BaselineProblem {
    Installation house = OnlyWith.failures(new TwoTanks().plan().draw(), POWER_LOST::equals);

    LimitAnswer.Found found = limit(house, new Property.Port("return", Failure.End.FIRST));

    SafeRange range = found.holds().getFirst();
    assertThat(range.above()).isEqualTo(new Decider.PumpIdle("return-pump", true));
    assertThat(range.to()).isLessThan(0.3);
    assertThat(found.mends()).as("a pump that stands still mends nothing").isEmpty();
  }

  /**
   * The display's rim of {@link TwoTanks} above the crest of its return, 560 mm over its bottom:
   * the return no longer passes a rim, but comes apart beside the sump all the same.
   */
  @Test
  void aRimAboveTheReturnDoesNotKeepItFromComingApart() throws BaselineProblem {
    Failure parts = new Failure.RunPartsAtLowestPoint("return");
    Installation house = OnlyWith.failures(new TwoTanks().plan().draw(), parts::equals);

    assertThat(limit(house, new Property.Rim("display")).mends()).isEmpty();
  }

  /**
   * Six vats with running water, whose lips lie 30 mm below their rims; beside them a reservoir of
   * 0.25 m², its rim 600 mm up, in a bund of 1 m² that is 80 mm deep.
   *
   * <pre>
   * If the wall of the reservoir fails, its water stands in both at one level, up to the bund's rim:
   *   1 m² · 80 mm = 80 L, in the reservoir 320 mm
   *   today it is 100 mm, which come to 25 mm, 55 mm below the rim
   * </pre>
   *
   * With a lip half clogged each vat comes closer to its rim than that, so those six are what the
   * search looks at first, and nobody foresees the seventh.
   */
  @Test
  void aFailureThatNobodyForesawDecides() throws BaselineProblem {
    Failure wallFails = new Failure.WallFails("reservoir");
    Installation house =
        OnlyWith.failures(
            sixVats()
                .basin("bund", box(1, 1, 0.08), "room")
                .vessel("reservoir", box(0.5, 0.5, 0.6), v -> v.in("bund").level(0.1).fresh())
                .draw(),
            failure ->
                failure.equals(wallFails)
                    || (failure instanceof Failure.RunClogs clogs
                        && clogs.degree() == Failure.Degree.BY_HALF));
    assertThat(roomLeft(house)).hasSize(7).endsWith(Map.entry(wallFails, 55L));

    LimitAnswer.Found found = limit(house, new Property.RunningLevel("reservoir"));

    SafeRange range = found.today().orElseThrow();
    assertThat(range.to()).isCloseTo(0.32, within(1e-9));
    assertThat(range.above()).isEqualTo(new Decider.FloorWet(wallFails));
  }

  private static Plan sixVats() {
    Plan plan = Plan.of("Vats").storey("ground", 0).floor("room", 12).drain("sewer", -0.5);
    for (int i = 1; i <= 6; i++) {
      String vat = "vat-" + i;
      String tap = "tap-" + i;
      plan.vessel(vat, box(0.5, 0.5, 0.4), v -> v.in("room").level(0.37))
          .source(tap, 1, 5e-5)
          .run("feed-" + i, r -> r.fromSupply(tap).to(vat, 0.5).bore(0.02).length(1))
          .run("lip-" + i, r -> r.fromLip(vat, 0.37).toDrain("sewer").bore(0.05).length(1.5));
    }
    return plan;
  }

  /** How much room is left below a rim (mm) after each failure, the least first. */
  private static List<Map.Entry<Failure, Long>> roomLeft(Installation house)
      throws BaselineProblem {
    return Sweep.everyFailure(house, 1, Progress.NONE).results().stream()
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .map(answer -> Map.entry(answer.failure(), roomLeft(answer.outcome())))
        .sorted(Map.Entry.comparingByValue())
        .toList();
  }

  private static long roomLeft(Outcome outcome) {
    return Math.round(
        outcome.vessels().stream()
                .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + 1e-4)
                .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
                .min()
                .orElseThrow()
            * 1000);
  }

  @Test
  void whatIsCancelledIsNotTold() throws BaselineProblem {
    List<Property> properties = Limits.properties(house(0.5, 0.29));
    Progress afterTwo =
        new Progress() {
          private int seen;

          @Override
          public void finished(int done, int of) {
            seen += of == properties.size() ? 1 : 0;
          }

          @Override
          public boolean cancelled() {
            return seen >= 2;
          }
        };

    LimitResult result = Limits.of(house(0.5, 0.29), properties, Bounds.DRY_FLOORS, 1, afterTwo);

    assertThat(result.answers()).hasSize(properties.size());
    assertThat(result.answers().subList(2, properties.size()))
        .hasOnlyElementsOfType(LimitAnswer.Cancelled.class);
  }
}
