package dryfloor.analysis.limit;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.TwoTanks;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be added to {@link TwoTanks} and to a topped-up sump, with the levels on paper. */
class MendsByHandTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();
  private static final Failure DRAIN_CLOGGED = new Failure.RunClogs("drain", Failure.Degree.FULLY);

  private static List<Remedy> mends(Installation house, Failure failure) throws BaselineProblem {
    Installation asked = OnlyWith.failures(house, failure::equals);
    return Mends.of(Sweep.everyFailure(asked, 2, Progress.NONE), failure, 2, Progress.NONE);
  }

  private static <C extends SingleChange> Remedy only(Class<C> kind, List<Remedy> remedies) {
    List<Remedy> found =
        remedies.stream().filter(remedy -> kind.isInstance(remedy.change())).toList();
    assertThat(found).as(kind.getSimpleName()).hasSize(1);
    assertDrawable(found.getFirst().mended());
    return found.getFirst();
  }

  /** What is added can be saved and read again without a complaint. */
  private static void assertDrawable(Installation mended) {
    assertThat(DrawingCheck.check(mended)).noneMatch(Finding::isError);
    Reading again = InstallationFile.readText(InstallationWriter.text(mended, Units.METRIC));
    assertThat(again).isInstanceOf(Reading.Read.class);
  }

  private static Outcome after(Failure failure, Installation mended) throws BaselineProblem {
    FailureResult result = Inquiry.of(mended, () -> false).answer(List.of(failure));
    return ((FailureResult.Answered) result).outcome();
  }

  /**
   *
   *
   * <pre>
   * Without power the display runs back through the return down to its outlet: 300 mm · 0.5 m²
   * are 150 L, and the sump has room for 200 mm · 0.4 m², 80 L. Holes 10 mm below the running
   * level, which is above the lip, let only that run back which stands above the lip anyway:
   *   display                                                        400 mm
   * </pre>
   */
  @Test
  void aSiphonBreakJustUnderTheWaterStopsTheRunBack() throws BaselineProblem {
    Installation house = new TwoTanks().plan().draw();
    assertThat(after(POWER_LOST, house).verdict()).isEqualTo(Verdict.WET);

    Remedy remedy = only(SingleChange.SiphonBreakAdded.class, inTheWater(house));

    assertLevel(after(POWER_LOST, remedy.mended()), "display").isCloseToMillimetres(400);
    assertThat(remedy.costs()).as("holes that clog").anyMatch(Cost.MoreToFail.class::isInstance);
  }

  /** Of the siphon breaks only that which the water covers, not that in the open. */
  private static List<Remedy> inTheWater(Installation house) throws BaselineProblem {
    return mends(house, POWER_LOST).stream()
        .filter(
            remedy ->
                remedy.change() instanceof SingleChange.SiphonBreakAdded added
                    && added.hole().coveredBy().isPresent())
        .toList();
  }

  /**
   *
   *
   * <pre>
   * Twice the bore of 32 mm above the rim: 500 + 64 = 564 mm over the display's bottom. Nothing
   * goes back, and what stands over the lip runs to the sump:      display at 400 mm
   * </pre>
   */
  @Test
  void anAirGapLetsNothingBack() throws BaselineProblem {
    Remedy remedy =
        only(SingleChange.AirGapMade.class, mends(new TwoTanks().plan().draw(), POWER_LOST));

    SingleChange.AirGapMade gap = (SingleChange.AirGapMade) remedy.change();
    assertThat(gap.elevation() - TwoTanks.DISPLAY).isCloseTo(0.564, within(1e-9));
    assertLevel(after(POWER_LOST, remedy.mended()), "display").isCloseToMillimetres(400);
  }

  /** An outlet over the rim lets nothing back, so no other one is a mend. */
  @Test
  void whatWetsNoFloorNeedsNoMend() throws BaselineProblem {
    Installation house = new TwoTanks().outletOverTheRim().plan().draw();
    assertThat(after(POWER_LOST, house).verdict()).isEqualTo(Verdict.DRY);

    assertThat(mends(house, POWER_LOST)).isEmpty();
  }

  /**
   * An outlet through the wall can't slip out; a free end over the rim can, and pours on the floor.
   */
  @Test
  void anAirGapThatCouldSlipOutIsNotOffered() throws BaselineProblem {
    Installation house = new TwoTanks().outletThroughTheWall().plan().draw();
    SingleChange gap =
        new SingleChange.AirGapMade(
            "return", Failure.End.SECOND, "display", TwoTanks.DISPLAY + 0.564, 0.064);
    Installation changed = gap.in(house);
    assertThat(after(POWER_LOST, changed).verdict()).as("it does mend").isNotEqualTo(Verdict.WET);
    assertThat(after(new Failure.EndSlipsOut("return", Failure.End.SECOND), changed).verdict())
        .as("but it breaks")
        .isEqualTo(Verdict.WET);

    assertThat(mends(house, POWER_LOST))
        .extracting(Remedy::change)
        .isNotEmpty()
        .noneMatch(SingleChange.AirGapMade.class::isInstance);
  }

  /**
   *
   *
   * <pre>
   * 0.5 L/s pass a lip of 50 mm under (0.0005/(1.84 π 0.05))^(2/3) = 14.4 mm of head, so the
   * display runs at 414.4 mm. Half the way from there to the rim is 457 mm; with the drain clogged
   * all goes over the new lip, under the same head:                 471.4 mm
   * </pre>
   */
  @Test
  void anEmergencyStandpipeTakesWhatAClogKeepsBack() throws BaselineProblem {
    Installation house = new TwoTanks().outletOverTheRim().dosed().plan().draw();
    assertThat(after(DRAIN_CLOGGED, house).verdict()).isEqualTo(Verdict.WET);

    Remedy remedy = only(SingleChange.StandpipeAdded.class, mends(house, DRAIN_CLOGGED));

    Run added = ((SingleChange.StandpipeAdded) remedy.change()).drain();
    assertThat(added.duty()).isEqualTo(Run.Duty.EMERGENCY);
    assertThat(((RunEnd.Opening) added.from()).elevation() - TwoTanks.DISPLAY)
        .isCloseTo(0.457, within(1e-9));
    assertLevel(after(DRAIN_CLOGGED, remedy.mended()), "display").isCloseToMillimetres(471.4);
  }

  /**
   *
   *
   * <pre>
   * When the top-off switch sticks, the pump would empty 272 L into a sump with room for 80 L. A
   * cut-off at three quarters of the way from 300 mm to the rim stops it at 450 mm; what fills the
   * sump by 150 mm · 0.4 m² = 60 L takes 150 mm from the reservoir's 0.4 m²:    550 mm
   * </pre>
   */
  @Test
  void aHighLevelCutOffStopsWhatFills() throws BaselineProblem {
    Failure stuck = new Failure.LevelSwitchStuckLow("top-off");
    Installation house =
        Plan.of("Topped up by a pump")
            .storey("ground", 0)
            .floor("room", 12)
            .circuit("main")
            .vessel("sump", box(0.8, 0.5, 0.5), v -> v.in("room").level(0.3))
            .vessel("reservoir", box(0.8, 0.5, 0.8), v -> v.in("room").level(0.7).fresh())
            .run(
                "line",
                r ->
                    r.from("reservoir", 0.02)
                        .to("sump", 0.55)
                        .bore(0.012)
                        .length(2)
                        .standsIn("room")
                        .dosingPump("top-off-pump", 0.1, "main", 0, 100, 0.05, 0))
            .levelSwitch(
                "top-off", "sump", 0.28, 0.3, Control.LevelSwitch.Action.FILLS, "top-off-pump")
            .draw();
    assertThat(after(stuck, house).verdict()).isEqualTo(Verdict.WET);

    Remedy remedy = only(SingleChange.CutOffAdded.class, mends(house, stuck));

    Outcome mended = after(stuck, remedy.mended());
    assertLevel(mended, "sump").isCloseToMillimetres(450);
    assertLevel(mended, "reservoir").isCloseToMillimetres(550);
  }

  /** A display that runs back fills its sump as high as a lower filling leaves room for. */
  @Test
  void numbersComeBeforeWhatIsAddedAndTheLeastOfThemFirst() throws BaselineProblem {
    List<SingleChange> changes =
        mends(new TwoTanks().plan().draw(), POWER_LOST).stream().map(Remedy::change).toList();

    assertThat(changes).isSortedAccordingTo(SingleChange.LEAST_FIRST);
    assertThat(changes.getFirst()).isInstanceOf(SingleChange.Moved.class);
    assertThat(changes.getLast()).isNotInstanceOf(SingleChange.Moved.class);
  }

  /**
   *
   *
   * <pre>
   * The running sump stands at 300 − 14.4 · 0.5/0.4 = 282 mm, less what fills the drain. With the
   * inlet at 220 mm the pump brings the display's 85.6 mm · 0.5 m² = 42.8 L to spill no more than
   * 62 mm · 0.4 m² = 24.8 L: dry, and it runs. With the inlet at 320 mm it is dry as well, but
   * the pump sucks air from the beginning.
   * </pre>
   */
  @Test
  void aPumpThatMovesNothingAnyMoreIsNoMend() throws BaselineProblem {
    Installation house =
        OnlyWith.failures(
            new TwoTanks().outletOverTheRim().dosed().plan().draw(), DRAIN_CLOGGED::equals);
    SweepResult today = Sweep.everyFailure(house, 1, Progress.NONE);
    Choices choices = new Choices(house);
    Property inlet = new Property.Port("return", Failure.End.FIRST);
    SingleChange higher = SingleChange.Moved.of(inlet, choices.scale(inlet), 0.22);
    SingleChange aboveTheWater = SingleChange.Moved.of(inlet, choices.scale(inlet), 0.32);
    assertThat(after(DRAIN_CLOGGED, aboveTheWater.in(house)).verdict()).isNotEqualTo(Verdict.WET);

    Proof proof =
        new Proof(new Today(today, Bounds.DRY_FLOORS), DRAIN_CLOGGED, choices, () -> false);
    assertThat(proof.of(higher)).isPresent();
    assertThat(proof.of(aboveTheWater)).isEmpty();
  }

  /**
   *
   *
   * <pre>
   * The pump brings 0.5 L/s where nothing stands against it, and 1000 m would stop it. It lifts the
   * water 1.8 m, from the sump at 270 mm to 2.05 m and through the pipe. At four fifths of its speed:
   *   today   0.5 (1 − 1.8/1000)             0.4991 L/s
   *   then    0.4 (1 − 1.8/(0.64 · 1000))    0.3989 L/s
   * The drain carries the same, which goes without saying.
   * </pre>
   */
  @Test
  void aSlowerPumpCostsFlow() throws BaselineProblem {
    Installation house = dosedHouse();

    assertThat(flows(house, new Property.PumpSpeed("return-pump"), 0.8))
        .singleElement()
        .satisfies(
            flow -> {
              assertThat(flow.run()).isEqualTo("return");
              assertThat(flow.before()).isCloseTo(0.4991e-3, within(1e-7));
              assertThat(flow.now()).isCloseTo(0.3989e-3, within(1e-7));
            });
    assertThat(flows(house, new Property.PumpSpeed("return-pump"), 0.97))
        .as("what differs by less than a twentieth is not worth telling")
        .isEmpty();
  }

  /** What the display takes in, the drain takes away, however wide it is and however high. */
  @Test
  void aDrainThatIsMovedCostsNoFlow() throws BaselineProblem {
    Installation house = dosedHouse();

    assertThat(flows(house, new Property.DrainBore("drain"), 0.07)).isEmpty();
    assertThat(flows(house, new Property.StandpipeLip("drain", Failure.End.FIRST), 1.92)).isEmpty();
  }

  /**
   * Two lips of 50 mm at one height share 0.4991 L/s by halves. With one of them 40 mm wide they
   * share it by their rims, 4 to 5: 0.2218 in place of 0.2496 L/s.
   */
  @Test
  void aNarrowerDrainLeavesMoreToTheOther() throws BaselineProblem {
    Installation house =
        OnlyWith.failures(
            new TwoTanks()
                .outletOverTheRim()
                .dosed()
                .plan()
                .run(
                    "other-drain",
                    r -> r.fromLip("display", 0.4).to("sump", 0.5).bore(0.05).length(2))
                .draw(),
            failure -> false);

    assertThat(flows(house, new Property.DrainBore("drain"), 0.04))
        .singleElement()
        .satisfies(
            flow -> {
              assertThat(flow.run()).isEqualTo("drain");
              assertThat(flow.before()).isCloseTo(0.24955e-3, within(1e-7));
              assertThat(flow.now()).isCloseTo(0.2218e-3, within(1e-6));
            });
  }

  private static Installation dosedHouse() {
    return OnlyWith.failures(
        new TwoTanks().outletOverTheRim().dosed().plan().draw(), failure -> false);
  }

  private static List<Cost.FlowsOtherwise> flows(
      Installation house, Property property, double value) throws BaselineProblem {
    SingleChange change =
        SingleChange.Moved.of(property, new Choices(house).scale(property), value);
    Today today = new Today(Sweep.everyFailure(house, 1, Progress.NONE), Bounds.DRY_FLOORS);
    Inquiry changed = Inquiry.of(change.in(house), () -> false);
    SweepResult answers = Sweep.everyFailure(changed, 1, Progress.NONE);
    return Costs.of(new Proven(change, answers, changed.undisturbed()), today).stream()
        .filter(Cost.FlowsOtherwise.class::isInstance)
        .map(Cost.FlowsOtherwise.class::cast)
        .toList();
  }
}
