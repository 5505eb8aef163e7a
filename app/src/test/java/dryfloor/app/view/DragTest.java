package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Handle;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Point;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.edit.Heights;
import dryfloor.app.view.picture.PictureView;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.Units;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;

/** Heights are dragged in the picture, and the verdicts follow. */
class DragTest {

  private static final String SCENARIO = "first-look/as-drawn.json";
  private static final String POWER_LOST = "power-lost.building";

  private final Installation drawing = HeadlessScreen.drawing(SCENARIO);

  @Test
  void aHigherSumpRunsOverWhenThePowerIsLostUntilItIsUndone() throws BaselineProblem {
    double sump = vessel("sump").bottom();
    Outcome before = powerLost(drawing);
    Outcome after = powerLost(Heights.level(drawing, "sump", sump + 0.490));
    assertThat(before.verdict()).isEqualTo(Verdict.DRY);
    assertThat(after.verdict()).isNotEqualTo(Verdict.DRY);
    assertThat(spilled(before, "sump")).isZero();
    assertThat(spilled(after, "sump")).isPositive();

    try (HeadlessScreen screen = answered()) {
      PictureView picture = screen.find("picture", PictureView.class);
      Label count = screen.find("changes-count", Label.class);
      Label stale = screen.find("stale-word", Label.class);
      Point2D level = onScreen(picture, handle(Handle.Kind.LEVEL, "sump"), sump + 0.262);
      screen.pull(
          picture, level, onScreen(picture, handle(Handle.Kind.LEVEL, "sump"), sump + 0.490));
      Screenshots.take(screen.scene(), "drag-in-the-hand");
      screen.release();
      HeadlessScreen.waitUntil("it is told that something is worse", count::isVisible);
      HeadlessScreen.waitUntil("the answers are fresh", () -> !stale.isVisible());
      Screenshots.take(screen.scene(), "drag-let-go");
      assertThat(changes(screen)).contains("DRY, now").contains("Power lost in the whole building");

      undo(screen);
      HeadlessScreen.waitUntil(
          "one undo takes all of it back", () -> !count.getParent().isVisible());
    }
  }

  @Test
  void theWindowSaysThatItsVerdictsAreStaleUntilTheyAreFresh() {
    try (HeadlessScreen screen = answered()) {
      PictureView picture = screen.find("picture", PictureView.class);
      Label stale = screen.find("stale-word", Label.class);
      double sump = vessel("sump").bottom();
      Handle level = handle(Handle.Kind.LEVEL, "sump");
      assertThat(HeadlessScreen.onScreen(stale::isVisible)).isFalse();
      screen.click(
          picture,
          onScreen(picture, level, sump + 0.262).getX(),
          onScreen(picture, level, sump + 0.262).getY());
      boolean staleAtOnce =
          HeadlessScreen.onScreen(
              () -> {
                new Robot().keyType(KeyCode.UP);
                return stale.isVisible();
              });
      assertThat(staleAtOnce).isTrue();
      HeadlessScreen.waitUntil("the answers are fresh", () -> !stale.isVisible());
    }
  }

  @Test
  void arrowsMoveTheChosenHeight() {
    try (HeadlessScreen screen = answered()) {
      PictureView picture = screen.find("picture", PictureView.class);
      Label value = screen.find("handle-value", Label.class);
      double sump = vessel("sump").bottom();
      Point2D level = onScreen(picture, handle(Handle.Kind.LEVEL, "sump"), sump + 0.262);
      screen.click(picture, level.getX(), level.getY());

      screen.press(KeyCode.UP);
      assertThat(HeadlessScreen.onScreen(value::getText)).contains("263 mm deep");
      screen.press(KeyCode.DOWN, KeyCode.SHIFT);
      assertThat(HeadlessScreen.onScreen(value::getText)).contains("253 mm deep");
      assertThat(HeadlessScreen.onScreen(picture::getAccessibleText)).contains("253 mm deep");

      screen.press(KeyCode.SPACE);
      screen.press(KeyCode.UP);
      assertThat(HeadlessScreen.onScreen(value::getText)).contains("rim at 501 mm");
    }
  }

  @Test
  void aLevelDraggedAboveItsRimStaysAtTheRim() {
    try (HeadlessScreen screen = answered()) {
      PictureView picture = screen.find("picture", PictureView.class);
      Label value = screen.find("handle-value", Label.class);
      double sump = vessel("sump").bottom();
      Handle level = handle(Handle.Kind.LEVEL, "sump");
      screen.pull(
          picture, onScreen(picture, level, sump + 0.262), onScreen(picture, level, sump + 0.9));

      assertThat(HeadlessScreen.onScreen(value::getText))
          .contains("500 mm deep")
          .contains("above the rim");
      screen.release();
    }
  }

  private static HeadlessScreen answered() {
    HeadlessScreen screen = HeadlessScreen.with(SCENARIO);
    screen.waitForAnswers();
    return screen;
  }

  private static String changes(HeadlessScreen screen) {
    return screen.find("changes", ListView.class).getItems().toString();
  }

  private static void undo(HeadlessScreen screen) {
    screen.press(KeyCode.Z, KeyCode.CONTROL);
  }

  private Vessel vessel(String id) {
    return drawing.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
  }

  private BuildingPicture building() {
    return BuildingPicture.of(
        Plan.of(drawing), DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""));
  }

  private Handle handle(Handle.Kind kind, String id) {
    return building().handles().stream()
        .filter(handle -> handle.kind() == kind && handle.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Where the middle of a handle is on the screen when it stands at an elevation. */
  private Point2D onScreen(PictureView picture, Handle handle, double elevation) {
    Point paper = building().onPaper(new Point(handle.middle().x(), elevation));
    return HeadlessScreen.onScreen(
        () -> new Point2D(picture.screenX(paper.x()), picture.screenY(paper.y())));
  }

  private static Outcome powerLost(Installation installation) throws BaselineProblem {
    return Sweep.everyFailure(installation, 1, Progress.NONE).results().stream()
        .filter(result -> FailureNames.id(result.failure()).equals(POWER_LOST))
        .map(FailureResult.Answered.class::cast)
        .findFirst()
        .orElseThrow()
        .outcome();
  }

  private static double spilled(Outcome outcome, String vessel) {
    return outcome.vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .mapToDouble(Outcome.VesselOutcome::spilled)
        .sum();
  }
}
