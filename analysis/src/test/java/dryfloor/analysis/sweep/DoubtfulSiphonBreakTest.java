package dryfloor.analysis.sweep;

import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/** A siphon break of 3 mm in 32 mm, 0.88 % of the bore: it may work or not. */
class DoubtfulSiphonBreakTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  /**
   * Both courses are dry and begin with the display 48 mm below its rim, which is the least
   * freeboard in both. If the hole works the sump ends at 345.637 mm, if not at 408.356 mm ({@code
   * PowerLossByHandTest} has the sums): less freeboard where water is gained, so that is told.
   */
  @Test
  void ofTwoDryCoursesTheOneThatFillsTheSumpHigherIsTold() {
    Installation installation = new DisplayAboveSump().breakHole(0.003).plan().draw();

    Outcome outcome = Trial.after(installation, POWER_LOST);

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "display").isCloseToMillimetres(550.127);
    assertLevel(outcome, "sump").isCloseToMillimetres(408.356);
    assertThat(outcome.notes()).contains(new Note.SiphonBreakInDoubt("siphon-break", false));
  }

  @Test
  void aHoleBigEnoughIsTakenToWorkWithoutDoubt() {
    Outcome outcome = Trial.after(DisplayAboveSump.asDrawn(), POWER_LOST);

    assertLevel(outcome, "sump").isCloseToMillimetres(345.637);
    assertThat(outcome.notes()).noneMatch(Note.SiphonBreakInDoubt.class::isInstance);
  }
}
