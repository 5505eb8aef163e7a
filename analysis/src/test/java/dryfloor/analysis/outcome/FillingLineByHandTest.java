package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static dryfloor.analysis.installation.WaterAssert.assertSupplied;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * A line that fills a reservoir now and then and stands full behind its shut valve in between.
 *
 * <pre>
 * 20 mm, 0.314159 L/m: 1.5 m level at 1.0 m, with the valve at 0.3 m and a joint at 1.5 m, 3 m up to
 * a crest at 2.0 m, 0.5 m down to the end at 1.9 m, over the reservoir's water at 1.3 m.
 * The joint lets go: 3 m · 0.314159 = 0.9425 L run out of it, what stands above it up to the crest.
 * The level part has no fall, and the mains stays shut. Columns are followed to a millilitre each.
 * </pre>
 */
class FillingLineByHandTest {

  private static final Failure LETS_GO = new Failure.JointParts("line", "joint");

  /** One that stands ready for an emergency and does not start full to its end. */
  @Test
  void aJointSpillsWhatStandsInTheLineThoughNothingFlows() {
    Outcome outcome = Trial.after(line(r -> r.duty(Run.Duty.EMERGENCY)), LETS_GO);

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertReached(outcome, "room").isWithin(0.002, 0.9425);
    assertSupplied(outcome, "mains").isNothing();
  }

  /** The float at the end is shut, too, and keeps what stands beyond the crest. */
  @Test
  void whatHangsUnderAShutFloatFallsOutOfALooseJoint() {
    Outcome outcome =
        Trial.after(line(r -> r.floatValve("float", 5, 0.4, "reservoir", 0.8, 0.05)), LETS_GO);

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertReached(outcome, "room").isWithin(0.002, 0.9425);
    assertSupplied(outcome, "mains").isNothing();
  }

  /** The vent sits at the crest, beyond the joint: the stub behind the shut valve has none. */
  @Test
  void aVentBeyondTheJointLetsNothingOutOfTheStubBeforeIt() {
    Outcome outcome = Trial.after(line(RunPlan::vented), LETS_GO);

    assertReached(outcome, "room").isWithin(0.002, 0.9425);
    assertSupplied(outcome, "mains").isNothing();
  }

  private static Installation line(Consumer<RunPlan> more) {
    return Plan.of("Filling line")
        .storey("ground", 0)
        .floor("room", 12)
        .mains("mains", 1, 300_000)
        .vessel("reservoir", box(1, 0.5, 1), v -> v.in("room").raised(0.5).level(0.8).fresh())
        .run(
            "line",
            r -> {
              r.fromSupply("mains").to("reservoir", 1.4).bore(0.02).length(5);
              r.by(1, 1.5).by(2, 4.5).valve("valve", 0.3, 0).joint("joint", 1.5, 1, "room");
              more.accept(r);
            })
        .draw();
  }
}
