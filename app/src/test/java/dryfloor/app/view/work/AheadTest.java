package dryfloor.app.view.work;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.app.view.edit.Heights;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** What is looked at while the drawing changes is answered before all else. */
class AheadTest {

  private static final String POWER_LOST = "power-lost.building";

  private final Installation drawing = ShippedDrawing.read("first-look/as-drawn.json");
  private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();

  @Test
  void theFailureThatIsLookedAtIsFreshWhileTheOthersAreStale() throws InterruptedException {
    try (Work work = new Work(drawing, screen::add)) {
      doUntil(() -> work.answers().get().isWhole());
      work.choose(Optional.of(POWER_LOST));
      Installation fuller = withSumpAt(0.490);
      List<Boolean> othersStale = new ArrayList<>();
      work.ahead().addListener((ahead, before, now) -> othersStale.add(work.isStale()));

      work.change(fuller);
      assertThat(work.fresh()).isEmpty();
      doUntil(() -> work.fresh().isPresent());
      Outcome early = outcome(work.chosenIn(work.fresh().orElseThrow()));
      doUntil(() -> !work.isStale() && work.answers().get().isWhole());

      assertThat(othersStale).containsExactly(true);
      assertThat(outcome(work.chosenResult())).isEqualTo(early);
    }
  }

  @Test
  void whatIsChosenOnlyAfterwardsIsNotTakenForFresh() throws InterruptedException {
    try (Work work = new Work(drawing, screen::add)) {
      doUntil(() -> work.answers().get().isWhole());
      work.choose(Optional.of(POWER_LOST));
      List<Boolean> freshForAnother = new ArrayList<>();
      work.ahead()
          .addListener(
              (ahead, before, now) -> {
                work.choose(Optional.of("wall-fails.display"));
                freshForAnother.add(work.fresh().isPresent());
              });

      work.change(withSumpAt(0.300));
      doUntil(() -> !work.isStale() && work.answers().get().isWhole());

      assertThat(freshForAnother).containsExactly(false);
      assertThat(FailureNames.id(work.chosenResult().orElseThrow().failure()))
          .isEqualTo("wall-fails.display");
    }
  }

  private static Outcome outcome(Optional<FailureResult> result) {
    return result
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .orElseThrow()
        .outcome();
  }

  private Installation withSumpAt(double depth) {
    double bottom =
        drawing.vessels().stream()
            .filter(vessel -> vessel.id().equals("sump"))
            .findFirst()
            .orElseThrow()
            .bottom();
    return Heights.level(drawing, "sump", bottom + depth);
  }

  /** Does what comes to the screen, one after the other, until something is so. */
  private void doUntil(BooleanSupplier condition) throws InterruptedException {
    while (!condition.getAsBoolean()) {
      Runnable next = screen.poll(60, TimeUnit.SECONDS);
      if (next == null) {
        throw new AssertionError("nothing more comes to the screen");
      }
      next.run();
    }
  }
}
