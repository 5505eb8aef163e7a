package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Handle;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Point;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.picture.PictureView;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** How soon the verdicts follow a hand that drags. */
class DragPaceTest {

  private static final int WARMING = 6;
  private static final int DRAGS = 20;

  @TempDir private Path folder = Path.of("");

  /** Twenty drags of a level, after six to warm up: it takes a while, so it is asked for. */
  @Test
  @EnabledIfSystemProperty(named = "dryfloor.pace", matches = ".*")
  void afterTheLastOfManyDragsTheVerdictsAreThoseOfTheDrawing()
      throws IOException, BaselineProblem {
    Path file = folder.resolve("loft.json");
    Files.copy(Path.of("..", "scenarios", "loft-reservoir", "as-drawn.json"), file);
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      screen.waitForAnswers();
      Work work = screen.window().work();
      HeadlessScreen.onScreen(
          () -> {
            work.choose(Optional.of("power-lost.building"));
            return work;
          });
      List<Double> looked = new ArrayList<>();
      List<Double> waits = new ArrayList<>();
      long worked = 0;
      for (int i = 0; i < WARMING + DRAGS; i++) {
        if (i == WARMING) {
          worked = worked();
        }
        Waits wait = drag(screen, work, i % 2 == 0 ? -6 : 6);
        if (i >= WARMING) {
          looked.add(wait.looked());
          waits.add(wait.all());
        }
      }
      double each = (worked() - worked) / 1e6 / DRAGS;
      tell("the failure looked at", looked, each);
      tell("all verdicts", waits, each);
      Installation last = HeadlessScreen.onScreen(() -> work.installation().get());
      SweepResult known =
          HeadlessScreen.onScreen(() -> ((Answers.Known) work.answers().get()).sweep());
      assertThat(verdicts(known)).isEqualTo(verdicts(Sweep.everyFailure(last, 1, Progress.NONE)));
      assertThat(known.installation()).isEqualTo(last);
    }
  }

  /** From the last movement to the answer that is looked at and to all of them (ms). */
  private record Waits(double looked, double all) {}

  /** Drags the level of the sump in five steps of the mouse. */
  private static Waits drag(FileScreen screen, Work work, int points) {
    PictureView picture =
        PictureView.class.cast(screen.window().stage().getScene().lookup("#picture"));
    Label stale = Label.class.cast(screen.window().stage().getScene().lookup("#stale-word"));
    AtomicLong moved = new AtomicLong();
    AtomicLong looked = new AtomicLong();
    AtomicLong answered = new AtomicLong();
    ChangeListener<Boolean> whole =
        (visible, before, now) -> answered.set(now ? 0 : System.nanoTime());
    ChangeListener<Optional<Answers.Known>> first =
        (ahead, before, now) -> looked.set(System.nanoTime());
    HeadlessScreen.onScreen(
        () -> {
          stale.visibleProperty().addListener(whole);
          // Listeners are told in the order they came: the window has shown it by then.
          work.ahead().addListener(first);
          Point2D from = sump(picture, work.installation().get());
          Robot robot = new Robot();
          robot.mouseMove(picture.localToScreen(from));
          robot.mousePress(MouseButton.PRIMARY);
          for (int step = 1; step <= 5; step++) {
            robot.mouseMove(picture.localToScreen(from.add(0, points * step / 5.0)));
          }
          moved.set(System.nanoTime());
          robot.mouseRelease(MouseButton.PRIMARY);
          return robot;
        });
    HeadlessScreen.waitUntil(
        "the verdicts have followed", () -> !work.isStale() && work.answers().get().isWhole());
    HeadlessScreen.onScreen(
        () -> {
          stale.visibleProperty().removeListener(whole);
          work.ahead().removeListener(first);
          return work;
        });
    return new Waits((looked.get() - moved.get()) / 1e6, (answered.get() - moved.get()) / 1e6);
  }

  /** Where the level of the sump can be taken hold of. */
  private static Point2D sump(PictureView picture, Installation drawing) {
    BuildingPicture building =
        BuildingPicture.of(
            Plan.of(drawing), DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""));
    Handle handle =
        building.handles().stream()
            .filter(h -> h.kind() == Handle.Kind.LEVEL && h.id().equals("sump"))
            .findFirst()
            .orElseThrow();
    Point at = building.onPaper(handle.middle());
    return new Point2D(picture.screenX(at.x()), picture.screenY(at.y()));
  }

  private static void tell(String what, List<Double> waits, double work) {
    List<Double> sorted = waits.stream().sorted().toList();
    System.out.printf(
        "loft-reservoir/as-drawn: %s %.0f ms after the last movement (median of %d;"
            + " %.0f to %.0f), %.0f ms of work for processors each; load %.1f%n",
        what,
        sorted.get(sorted.size() / 2),
        sorted.size(),
        sorted.getFirst(),
        sorted.getLast(),
        work,
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
  }

  /** How long processors have worked for this program (ns). */
  private static long worked() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }

  private static List<String> verdicts(SweepResult sweep) {
    return sweep.results().stream()
        .map(
            result ->
                result instanceof FailureResult.Answered answered
                    ? answered.failure() + " " + answered.outcome().verdict()
                    : result.toString())
        .toList();
  }
}
