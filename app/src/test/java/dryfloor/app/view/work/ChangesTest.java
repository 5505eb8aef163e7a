package dryfloor.app.view.work;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.app.view.edit.Heights;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** What ends better and worse in another drawing. */
class ChangesTest {

  private static final String POWER_LOST = "power-lost.building";

  private final Installation drawing = ShippedDrawing.read("first-look/as-drawn.json");
  private final Installation fuller = withSumpAt(drawing, 0.490);

  @Test
  void aFullerSumpIsWorseAndTheWayBackIsBetter() throws BaselineProblem {
    SweepResult before = sweep(drawing);
    SweepResult after = sweep(fuller);

    Changes there = Changes.between(before, after);
    Changes back = Changes.between(after, before);

    assertThat(failures(there.worse())).contains(POWER_LOST);
    assertThat(failures(there.better())).doesNotContain(POWER_LOST);
    assertThat(failures(back.better())).isEqualTo(failures(there.worse()));
    assertThat(back.gone()).hasSameSizeAs(there.added());
  }

  @Test
  void whatTurnsToAnotherVerdictIsToldFirst() throws BaselineProblem {
    List<Changes.Change> worse = Changes.between(sweep(drawing), sweep(fuller)).worse();
    long turned = worse.stream().filter(Changes.Change::isTurned).count();

    assertThat(turned).isPositive();
    assertThat(worse.stream().limit(turned)).allMatch(Changes.Change::isTurned);
  }

  @Test
  void moreWaterOnAFloorIsToldBeforeLess() throws BaselineProblem {
    List<Double> water =
        Changes.between(sweep(drawing), sweep(fuller)).worse().stream()
            .filter(change -> !change.isTurned())
            .map(change -> Math.abs(change.moreWater().orElseThrow()))
            .toList();

    assertThat(water.getFirst()).isGreaterThan(water.getLast());
    assertThat(water).isSortedAccordingTo(Comparator.reverseOrder());
  }

  @Test
  void aFailureThatIsSwitchedOffIsNoBetter() throws BaselineProblem {
    FailureSettings usual = drawing.failureSettings();
    Installation silenced =
        drawing.withFailureSettings(
            new FailureSettings(
                List.of(new FailureSettings.Skipped("wall-fails.display", "thick glass")),
                usual.topUps(),
                usual.sequences(),
                usual.dripArea(),
                usual.outage(),
                usual.surge()));

    Changes changes = Changes.between(sweep(drawing), sweep(silenced));

    assertThat(changes.better()).isEmpty();
    assertThat(changes.gone())
        .containsExactly(
            new Changes.Gone(
                "wall-fails.display", "Display bursts and loses all its water at once"));
  }

  @Test
  void theSameDrawingChangesNothing() throws BaselineProblem {
    Changes none = Changes.between(sweep(drawing), sweep(drawing));
    assertThat(none.isEmpty()).isTrue();
    assertThat(none.same()).hasSize(sweep(drawing).results().size());
  }

  @Test
  void changesAreToldSinceTheLastSave() throws InterruptedException {
    BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    try (Work work = new Work(drawing, screen::add)) {
      work.change(fuller);
      Deque<Boolean> seen = new ArrayDeque<>();
      work.changes()
          .addListener((changes, before, now) -> now.ifPresent(c -> seen.add(c.isEmpty())));
      runUntil(screen, () -> !seen.isEmpty());
      assertThat(seen.getLast()).isFalse();

      work.markSaved(work.installation().get());
      runUntil(screen, () -> work.changes().get().map(Changes::isEmpty).orElse(false));
      assertThat(work.saved()).isEqualTo(fuller);
      assertThat(work.changes().get()).map(Changes::isEmpty).isEqualTo(Optional.of(true));
    }
  }

  private static void runUntil(BlockingQueue<Runnable> screen, BooleanSupplier done)
      throws InterruptedException {
    while (!done.getAsBoolean()) {
      Runnable next = screen.poll(60, TimeUnit.SECONDS);
      assertThat(next).as("something for the screen").isNotNull();
      next.run();
    }
  }

  private static List<String> failures(List<Changes.Change> changes) {
    return changes.stream().map(Changes.Change::failure).toList();
  }

  private static SweepResult sweep(Installation installation) throws BaselineProblem {
    return Sweep.everyFailure(installation, 1, Progress.NONE);
  }

  private static Installation withSumpAt(Installation drawing, double depth) {
    double bottom =
        drawing.vessels().stream()
            .filter(vessel -> vessel.id().equals("sump"))
            .findFirst()
            .orElseThrow()
            .bottom();
    return Heights.level(drawing, "sump", bottom + depth);
  }
}
