package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import org.junit.jupiter.api.Test;

/** Somebody opens a drawing and looks at what can happen. */
class FirstLookTest {

  @Test
  void aFailureChosenFromTheListTellsItsStory() {
    try (HeadlessScreen screen = HeadlessScreen.with("first-look/as-drawn.json")) {
      ListView<?> failures = screen.find("failures", ListView.class);
      HeadlessScreen.waitUntil("failures are listed", () -> failures.getItems().size() > 40);

      screen.click(failures, 60, 50);

      Label verdict = screen.find("verdict", Label.class);
      HeadlessScreen.waitUntil("the verdict is told", () -> verdict.getText().contains("WET"));
      assertThat(screen.find("sentence", Label.class).getText()).contains("floor");
      Screenshots.take(screen.scene(), "first-look");
    }
  }
}
