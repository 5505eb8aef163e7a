package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;

/** Somebody looks for a failure among many. */
class ListTest {

  @Test
  void wordsNarrowTheList() {
    try (HeadlessScreen screen = listed()) {
      ListView<?> failures = screen.find("failures", ListView.class);
      int all = failures.getItems().size();
      TextField search = screen.find("search", TextField.class);
      HeadlessScreen.onScreen(
          () -> {
            search.setText("bursts");
            return search;
          });
      assertThat(failures.getItems()).hasSizeBetween(2, all / 2);
      assertThat(screen.find("list-state", Label.class).getText())
          .isEqualTo((failures.getItems().size() - 1) + " of " + (all - 1) + " failures");
    }
  }

  @Test
  void aVerdictSwitchedOffIsNotListed() {
    try (HeadlessScreen screen = listed()) {
      ListView<?> failures = screen.find("failures", ListView.class);
      ToggleButton wet = screen.find("filter-WET", ToggleButton.class);
      int all = failures.getItems().size();
      int wetOnes = Integer.parseInt(wet.getText().replaceAll("\\D", ""));
      assertThat(wetOnes).isPositive();

      screen.click(wet, 12, 12);

      HeadlessScreen.waitUntil(
          "wet ones are gone", () -> failures.getItems().size() == all - wetOnes);
    }
  }

  @Test
  void narrowingTheListKeepsWhatIsLookedAt() {
    try (HeadlessScreen screen = listed()) {
      ListView<?> failures = screen.find("failures", ListView.class);
      screen.click(failures, 60, 60);
      Label shown = screen.find("shown", Label.class);
      HeadlessScreen.waitUntil("one is chosen", () -> shown.getText().contains("bursts"));
      String before = shown.getText();
      screen.click(screen.find("filter-WET", Node.class), 12, 12);
      assertThat(HeadlessScreen.onScreen(shown::getText)).isEqualTo(before);
    }
  }

  private static HeadlessScreen listed() {
    HeadlessScreen screen = HeadlessScreen.with("first-look/as-drawn.json");
    screen.waitForAnswers();
    return screen;
  }
}
