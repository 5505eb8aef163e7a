package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.BackToFront;
import dryfloor.analysis.installation.Fingerprint;
import dryfloor.analysis.installation.Lifted;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What the answer does not depend on. */
@Tried
class SameAnswerPropertiesTest {

  private static final int FAILURES = 5;

  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void threadsAndTheOrderOfTheFileChangeNoBit(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot) throws BaselineProblem {
    Optional<Settled> sound = Settled.sound(building);
    Assume.that(sound.isPresent());
    Installation drawn =
        OnlyWith.failures(building.draw(), sound.get().sample(FAILURES, lot)::contains);
    List<String> alone = Fingerprint.of(Sweep.everyFailure(drawn, 1, Progress.NONE));

    SweepResult together = Sweep.everyFailure(BackToFront.shuffled(drawn, lot), 3, Progress.NONE);

    assertThat(Fingerprint.of(together)).isEqualTo(alone);
  }

  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void theUnitsOfTheFileChangeNoLevel(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot, @ForAll Units units) {
    sameWhen(
        building,
        lot,
        0,
        drawn ->
            switch (InstallationFile.readText(InstallationWriter.text(drawn, units))) {
              case Reading.Read read -> read.installation();
              case Reading.Rejected rejected ->
                  throw new AssertionError("can't be read: " + rejected.problems());
            });
  }

  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void aShiftOfTheWholeBuildingChangesNoLevel(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @IntRange(min = -20_000, max = 200_000) int millimetres) {
    double up = Unit.mm(millimetres);
    sameWhen(building, lot, up, new Lifted(up)::lift);
  }

  private static void sameWhen(
      Building building, int lot, double up, UnaryOperator<Installation> change) {
    Optional<Settled> drawn = Settled.calm(building);
    Assume.that(drawn.isPresent());
    Settled changed = Settled.of(change.apply(building.draw())).orElseThrow();
    Levels.same(
        drawn.get().outcome(), changed.outcome(), up, Levels.A_TENTH_OF_A_MILLIMETRE, "nothing");
    for (Failure failure : drawn.get().sample(FAILURES, lot)) {
      Optional<Course> before = drawn.get().after(failure).filter(Settled::isStill);
      if (before.isPresent()) {
        Outcome after = OutcomeBuilder.of(changed.after(failure).orElseThrow(), List.of());
        Levels.same(
            OutcomeBuilder.of(before.get(), List.of()),
            after,
            up,
            Levels.A_TENTH_OF_A_MILLIMETRE,
            FailureNames.id(failure));
      }
    }
  }
}
