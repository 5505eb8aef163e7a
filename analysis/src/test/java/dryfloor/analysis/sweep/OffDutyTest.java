package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;

/** A drawing that does not circulate must not pass for a safe one. */
class OffDutyTest {

  @Test
  void aPumpThatLiftsTooLittleMovesNoWater() throws BaselineProblem {
    // The display is 5 m above the pump; 2 m of head at no flow never gets there.
    assertThat(idle(withReturn(r -> r.pump("weak", 0.2, "main", 0, 2, 0.6, 1))))
        .containsExactly(new Note.IdlePump("weak", false));
  }

  @Test
  void aPumpWhoseChamberLosesItsWaterRunsDry() throws BaselineProblem {
    Installation weeping =
        new DisplayAboveSump()
            .plan()
            .drain("gully", -0.2)
            .run("weep", r -> r.from("chamber", 0.0).toDrain("gully").bore(0.03).length(1))
            .draw();

    assertThat(idle(weeping)).contains(new Note.IdlePump("return-pump", true));
  }

  @Test
  void anEmergencyDrainAtTheWaterLineRunsWhenAllIsWell() throws BaselineProblem {
    // Its lip lies 40 mm below that of the main standpipe: the pump's water takes it first.
    Installation tank =
        new DisplayAboveSump()
            .plan()
            .run(
                "spare",
                r ->
                    r.fromLip("display", 0.56)
                        .to("sump", 0.4)
                        .bore(0.06)
                        .length(5)
                        .vented()
                        .duty(Run.Duty.EMERGENCY))
            .draw();

    assertThat(Sweep.everyFailure(tank, 1, Progress.NONE).normal().notes())
        .filteredOn(Note.EmergencyDrainRuns.class::isInstance)
        .singleElement(InstanceOfAssertFactories.type(Note.EmergencyDrainRuns.class))
        .satisfies(note -> assertThat(note.run()).isEqualTo("spare"))
        .satisfies(note -> assertThat(note.flow()).isGreaterThan(0.1e-3));
    assertThat(Trial.after(tank, new Failure.RunClogs("return", Failure.Degree.BY_HALF)).story())
        .extracting(StoryEvent::what)
        .doesNotContain(StoryEvent.What.BEGINS_TO_FLOW);
  }

  @Test
  void aHouseThatRunsHasNone() throws BaselineProblem {
    assertThat(idle(new DisplayAboveSump().plan().draw())).isEmpty();
  }

  private static Installation withReturn(Consumer<RunPlan> pump) {
    Plan plan = new DisplayAboveSump().plan();
    plan.run(
        "second-return",
        r -> pump.accept(r.from("chamber", 0.05).to("display", 0.64).length(6).by(4.55, 5.2)));
    return plan.draw();
  }

  private static List<Note.IdlePump> idle(Installation drawing) throws BaselineProblem {
    return Sweep.everyFailure(drawing, 1, Progress.NONE).normal().notes().stream()
        .filter(Note.IdlePump.class::isInstance)
        .map(Note.IdlePump.class::cast)
        .toList();
  }
}
