package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Point;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.picture.PictureView;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Somebody draws: chooses, copies, deletes, connects. */
class DraftTest {

  private static final String SCENARIO = "first-look/as-drawn.json";

  private final Installation drawing = HeadlessScreen.drawing(SCENARIO);

  @Test
  void aVesselIsDuplicatedDeletedAndBroughtBack() {
    try (HeadlessScreen screen = answered()) {
      click(screen, "top-off");
      assertThat(heading(screen)).isEqualTo("Vessel: Top-off reservoir");

      screen.press(KeyCode.D, KeyCode.CONTROL, KeyCode.SHIFT);
      chosen(screen, "Vessel: Top-off reservoir 2");
      Screenshots.take(screen.scene(), "draft-duplicate");

      focusPicture(screen);
      screen.press(KeyCode.DELETE);
      assertThat(heading(screen)).doesNotContain("Top-off");

      screen.press(KeyCode.Z, KeyCode.CONTROL);
      screen.press(KeyCode.Z, KeyCode.CONTROL);
      fresh(screen);
      assertThat(count(screen, "changes-count")).isFalse();
    }
  }

  @Test
  void aVesselIsCopiedFromOneWindowIntoAnother() {
    try (HeadlessScreen first = answered()) {
      click(first, "top-off");
      first.press(KeyCode.C, KeyCode.CONTROL);
      try (HeadlessScreen second = HeadlessScreen.with("loft-reservoir/as-drawn.json")) {
        focusPicture(second);
        second.press(KeyCode.V, KeyCode.CONTROL);
        chosen(second, "Vessel: Top-off reservoir");
        fresh(second);
        Screenshots.take(second.scene(), "draft-pasted");
      }
    }
  }

  @Test
  void aRunIsPulledFromAVesselToTheDrain() {
    try (HeadlessScreen screen = answered()) {
      PictureView picture = screen.find("picture", PictureView.class);
      focusPicture(screen);
      screen.press(KeyCode.R, KeyCode.CONTROL);
      Point2D gully = at(picture, "gully");
      screen.pull(picture, at(picture, "top-off"), gully);
      Screenshots.take(screen.scene(), "draft-run-in-the-hand");
      screen.release();

      assertThat(heading(screen)).isEqualTo("Run: Run");
      fresh(screen);
      Screenshots.take(screen.scene(), "draft-run");
    }
  }

  private static HeadlessScreen answered() {
    HeadlessScreen screen = HeadlessScreen.with(SCENARIO);
    fresh(screen);
    return screen;
  }

  private static void fresh(HeadlessScreen screen) {
    Label stale = screen.find("stale-word", Label.class);
    HeadlessScreen.waitUntil("failures are answered", () -> !stale.isVisible());
  }

  private static void chosen(HeadlessScreen screen, String expected) {
    Label heading = screen.find("sheet-heading", Label.class);
    HeadlessScreen.waitUntil(expected + " is chosen", () -> heading.getText().startsWith(expected));
  }

  private static String heading(HeadlessScreen screen) {
    Label heading = screen.find("sheet-heading", Label.class);
    return HeadlessScreen.onScreen(() -> heading.getText());
  }

  private static boolean count(HeadlessScreen screen, String id) {
    Label label = screen.find(id, Label.class);
    return HeadlessScreen.onScreen(() -> label.getParent().isVisible());
  }

  private static void focusPicture(HeadlessScreen screen) {
    PictureView picture = screen.find("picture", PictureView.class);
    HeadlessScreen.onScreen(
        () -> {
          picture.requestFocus();
          return picture;
        });
  }

  private void click(HeadlessScreen screen, String id) {
    PictureView picture = screen.find("picture", PictureView.class);
    Point2D at = at(picture, id);
    screen.click(picture, at.getX(), at.getY());
  }

  /** Somewhere inside what has this id, on the screen. */
  private Point2D at(PictureView picture, String id) {
    BuildingPicture building =
        BuildingPicture.of(
            Plan.of(drawing), DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""));
    Point paper = building.place(id).orElseThrow();
    return HeadlessScreen.onScreen(
        () -> new Point2D(picture.screenX(paper.x()) + 8, picture.screenY(paper.y())));
  }
}
