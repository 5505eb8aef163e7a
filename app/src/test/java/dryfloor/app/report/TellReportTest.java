package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One outcome as its reader gets it. */
class TellReportTest {

  private static final Outcome WET = SampleOutcome.wet();

  @Test
  void aLevelThatStartsElsewhereThanDrawnIsSaidAtTheHead() {
    Outcome dry = SampleOutcome.dry();
    List<Outcome.VesselOutcome> vessels =
        dry.vessels().stream().map(TellReportTest::lowerIfTheSump).toList();
    assertThat(tell(with(dry, vessels, dry.ending(), dry.story(), List.of())))
        .contains("The drawing shows the sump at 262 mm; running, it settles at 251 mm.")
        .contains("Every failure starts from the levels that settle");
  }

  @Test
  void aLevelThatStartsAsDrawnIsNotTalkedAbout() {
    Outcome dry = SampleOutcome.dry();
    List<Outcome.VesselOutcome> asDrawn =
        dry.vessels().stream().map(vessel -> from(vessel, drawn(vessel.id()))).toList();
    assertThat(tell(with(dry, asDrawn, dry.ending(), dry.story(), List.of())))
        .doesNotContain("running, it settles");
  }

  @Test
  void levelsMayBeStillBeforeTheLastEventOfTheStory() {
    List<StoryEvent> story =
        List.of(SampleOutcome.event(1860, StoryEvent.What.STARTS, "top-off-pump", "", -1));
    assertThat(tell(with(WET, WET.vessels(), new Ending.AtRest(720), story, List.of())))
        .contains("levels within 1 mm of their end after 12 min; last event told at 31 min\n");
  }

  @Test
  void oneDoubtIsToldOnce() {
    Note doubt = new Note.SiphonBreakInDoubt("return-break", true);
    assertThat(tell(with(WET, WET.vessels(), WET.ending(), WET.story(), List.of(doubt, doubt))))
        .containsOnlyOnce("In doubt:");
  }

  @Test
  void tablesWithoutHeadingsBeginAtOnce() {
    assertThat(tell(WET)).contains("Drains took\n  Gully", "Times\n  first spill");
  }

  @Test
  void aDrainThatGivesWaterBackIsNotSaidToTakeIt() {
    Outcome backed =
        new Outcome(
            WET.verdict(),
            WET.ending(),
            WET.margin(),
            WET.vessels(),
            WET.floors(),
            WET.beyond(),
            List.of(new Outcome.Passed("gully", -0.5)),
            WET.supplied(),
            WET.firstSpill(),
            WET.firstWetFloor(),
            WET.dryPumps(),
            WET.ledger(),
            WET.story(),
            WET.notes(),
            WET.trajectory());
    assertThat(tell(backed)).containsPattern("Gully in the cellar +500 L +came back up\n");
  }

  @Test
  void dribblesTakeNoLineOfTheLedger() {
    Ledger.Entry dribble =
        new Ledger.Entry("teeth", Ledger.Way.WEIR, "overflow-box", "display", 4e-6, 0);
    Outcome outcome =
        new Outcome(
            WET.verdict(),
            WET.ending(),
            WET.margin(),
            WET.vessels(),
            WET.floors(),
            WET.beyond(),
            WET.drained(),
            WET.supplied(),
            OptionalDouble.of(1),
            WET.firstWetFloor(),
            WET.dryPumps(),
            new Ledger(
                List.of(dribble, WET.ledger().entries().getLast()),
                List.of(),
                WET.ledger().until(),
                1e-12),
            WET.story(),
            WET.notes(),
            WET.trajectory());
    assertThat(tell(outcome))
        .contains("over its rim", "Every drop is accounted for.")
        .doesNotContain("over the overflow teeth", "0 L.");
  }

  private static Outcome.VesselOutcome lowerIfTheSump(Outcome.VesselOutcome vessel) {
    return from(vessel, vessel.id().equals("sump") ? vessel.bottom() + 0.251 : drawn(vessel.id()));
  }

  private static double drawn(String id) {
    return SampleInstallation.get().vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .mapToDouble(Vessel::level)
        .findFirst()
        .orElseThrow();
  }

  private static Outcome.VesselOutcome from(Outcome.VesselOutcome vessel, double before) {
    return new Outcome.VesselOutcome(
        vessel.id(),
        before,
        vessel.levelAfter(),
        vessel.rim(),
        vessel.bottom(),
        vessel.volumeBefore(),
        vessel.volumeAfter(),
        vessel.highestLevel(),
        vessel.highestTime(),
        vessel.salinityBefore(),
        vessel.salinityAfter(),
        vessel.spilled());
  }

  private static Outcome with(
      Outcome other,
      List<Outcome.VesselOutcome> vessels,
      Ending ending,
      List<StoryEvent> story,
      List<Note> notes) {
    return new Outcome(
        other.verdict(),
        ending,
        other.margin(),
        vessels,
        other.floors(),
        other.beyond(),
        other.drained(),
        other.supplied(),
        other.firstSpill(),
        other.firstWetFloor(),
        other.dryPumps(),
        other.ledger(),
        story,
        notes,
        other.trajectory());
  }

  private static String tell(Outcome outcome) {
    Wording wording = Wording.of(SampleInstallation.get(), Units.METRIC);
    return TellReport.of("Some failure", outcome, wording, Ink.PLAIN);
  }
}
