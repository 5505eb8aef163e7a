package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Shape;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.picture.PictureView;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** What one picture of a play costs, with marks that go with the water and without. */
class PicturePaceTest {

  private static final int ROUNDS = 6;
  private static final int PICTURES = 25;
  private static final Set<String> PAINTERS =
      Set.of("JavaFX Application Thread", "QuantumRenderer-0");

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /** Some hundred pictures of the largest drawing: it takes a while, so it is asked for. */
  @Test
  @EnabledIfSystemProperty(named = "dryfloor.pace", matches = ".*")
  void marksInEveryRunCostLittleBesideThePicture() throws BaselineProblem {
    MovingScene film = powerLost(HeadlessScreen.drawing("grand-hall/corrected.json"));
    HeadlessScreen.start();
    BuildingPicture building =
        BuildingPicture.of(Plan.of(film.wording().installation()), film.end());
    PictureView picture = HeadlessScreen.onScreen(PictureView::new);
    Scene scene = HeadlessScreen.onScreen(() -> new Scene(picture, 1440, 900));
    double still = Double.POSITIVE_INFINITY;
    double moving = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      still = Math.min(still, cost(film, building, picture, scene, false));
      moving = Math.min(moving, cost(film, building, picture, scene, true));
    }
    Screenshots.take(scene, "grand-hall-marks");
    List<Shape> shown = HeadlessScreen.onScreen(picture::shown);
    long marks = shown.stream().filter(Shape.Stream.class::isInstance).count();
    System.out.printf(
        "grand-hall/corrected: %.1f ms of work for a picture without marks, %.1f ms with marks"
            + " in %d stretches of runs, the best of %d rounds of %d; load %.1f%n",
        still,
        moving,
        marks,
        ROUNDS,
        PICTURES,
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    assertThat(marks).isGreaterThan(5);
    assertThat(moving).isLessThan(1.5 * still);
  }

  /** Work of both threads that paint (ms) for each picture. */
  private static double cost(
      MovingScene film, BuildingPicture building, PictureView picture, Scene scene, boolean moves) {
    long before = worked();
    for (int i = 0; i < PICTURES; i++) {
      double moment = film.duration() * i / (PICTURES * 20.0);
      OptionalDouble travelled = moves ? OptionalDouble.of(1.0 * i) : OptionalDouble.empty();
      HeadlessScreen.onScreen(
          () -> {
            picture.show(
                building.shapes(film.at(moment), travelled), building.width(), building.height());
            return scene.snapshot(null);
          });
    }
    return (worked() - before) / 1e6 / PICTURES;
  }

  private static long worked() {
    return LongStream.of(THREADS.getAllThreadIds())
        .filter(id -> isPainter(THREADS.getThreadInfo(id)))
        .map(THREADS::getThreadCpuTime)
        .sum();
  }

  private static boolean isPainter(ThreadInfo thread) {
    return thread != null && PAINTERS.contains(thread.getThreadName());
  }

  private static MovingScene powerLost(Installation drawing) throws BaselineProblem {
    Failure failure =
        FailureCatalogue.of(drawing).stream()
            .filter(one -> FailureNames.id(one).equals("power-lost.building"))
            .findFirst()
            .orElseThrow();
    Outcome outcome =
        switch (Sweep.together(drawing, List.of(failure))) {
          case FailureResult.Answered answered -> answered.outcome();
          case FailureResult.Unanswered none -> throw new AssertionError(none.reason());
          case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
        };
    return MovingScene.of(
        Wording.of(drawing, Units.METRIC), FailureNames.name(failure, drawing), List.of(), outcome);
  }
}
