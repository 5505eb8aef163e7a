package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Somebody asks how far what is chosen can be changed. */
class LimitsOnScreenTest {

  @AfterEach
  void asItWas() {
    dark(false);
  }

  @Test
  void theLimitsStandBesideTheFieldsAndGrowStaleWithTheDrawing() {
    try (HeadlessScreen screen = chosen("Sump")) {
      screen.click(screen.find("limits-search", Button.class), 20, 12);
      HeadlessScreen.waitUntil(
          "the limit is told", () -> screen.scene().lookup("#limit-level") != null);
      Label limit = screen.find("limit-level", Label.class);
      assertThat(HeadlessScreen.onScreen(limit::getText))
          .startsWith("Holds from 251 mm to 301 mm: 39 mm left upwards, 11 mm left downwards.")
          .contains(
              "At 302 mm, just above: Main drain comes apart at its lowest point wets a floor");
      assertThat(HeadlessScreen.onScreen(screen.find("field-level", Node.class)::getAccessibleHelp))
          .contains("Holds ");
      Screenshots.take(screen.scene(), "limits-light");
      dark(true);
      Screenshots.take(screen.scene(), "limits-dark");
      dark(false);

      TextField height = screen.find("field-level", TextField.class);
      HeadlessScreen.onScreen(
          () -> {
            height.requestFocus();
            height.setText("270 mm");
            return height;
          });
      screen.press(KeyCode.ENTER);
      Label state = screen.find("limits-state", Label.class);
      HeadlessScreen.waitUntil("it is stale", () -> state.getText().contains("changed since"));
      assertThat(HeadlessScreen.onScreen(screen.find("limit-level", Label.class)::getText))
          .startsWith("Of an earlier drawing: ");
      Screenshots.take(screen.scene(), "limits-stale");
    }
  }

  /** By hand as in {@code LimitsCommandTest}: the same question, so the same answer. */
  @Test
  void moreCanBeAskedThanDryFloors() {
    try (HeadlessScreen screen = chosen("Sump")) {
      write(screen, "limits-keep", "120 %");
      screen.click(screen.find("limits-search", Button.class), 20, 12);
      Label problem = screen.find("limits-problem", Label.class);
      HeadlessScreen.waitUntil(
          "it is refused", () -> problem.getText().contains("give at most 100 %"));

      write(screen, "limits-keep", "99 %");
      screen.click(screen.find("limits-search", Button.class), 20, 12);
      HeadlessScreen.waitUntil(
          "the limit is told", () -> screen.scene().lookup("#limit-level") != null);
      assertThat(HeadlessScreen.onScreen(problem::isVisible)).isFalse();
      assertThat(HeadlessScreen.onScreen(screen.find("limits-state", Label.class)::getText))
          .contains("with less than 99 % of its water");
      Screenshots.take(screen.scene(), "limits-bounds");
    }
  }

  private static void write(HeadlessScreen screen, String field, String text) {
    TextField into = screen.find(field, TextField.class);
    HeadlessScreen.onScreen(
        () -> {
          into.setText(text);
          return into;
        });
  }

  @Test
  void theSearchIsGivenUp() {
    try (HeadlessScreen screen = chosen("Sump")) {
      screen.click(screen.find("limits-search", Button.class), 20, 12);
      HeadlessScreen.waitUntil(
          "it searches", () -> screen.scene().lookup("#limits-search-cancel") != null);
      screen.click(screen.find("limits-search-cancel", Button.class), 10, 10);
      HeadlessScreen.waitUntil(
          "it can be asked again", () -> screen.scene().lookup("#limits-search") != null);
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().lookup("#limit-level") == null))
          .isTrue();
    }
  }

  private static HeadlessScreen chosen(String id) {
    HeadlessScreen screen = HeadlessScreen.with("first-look/as-drawn.json");
    screen.waitForAnswers();
    Node picture = screen.find("picture", Node.class);
    HeadlessScreen.onScreen(
        () -> {
          picture.requestFocus();
          return picture;
        });
    Label heading = screen.find("sheet-heading", Label.class);
    for (int steps = 0; steps < 60 && !heading.getText().endsWith(id); steps++) {
      screen.press(KeyCode.RIGHT);
    }
    HeadlessScreen.onScreen(
        () -> {
          ((SideTabs) screen.scene().lookup("#side-tabs")).showDrawing();
          return picture;
        });
    return screen;
  }

  private static void dark(boolean dark) {
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.LOOKS.dark().set(dark);
          return dark;
        });
  }
}
