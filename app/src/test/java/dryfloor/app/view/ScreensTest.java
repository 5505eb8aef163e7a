package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The screens in light and dark, with usual and with twice as large letters. */
class ScreensTest {

  @AfterEach
  void asItWas() {
    look(false, 14);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-look", "grand-hall"})
  void everyScreenCanBeLookedAt(String scenario) {
    try (HeadlessScreen screen = HeadlessScreen.with(scenario + "/as-drawn.json")) {
      ListView<?> failures = screen.find("failures", ListView.class);
      HeadlessScreen.waitUntil("failures are listed", () -> failures.getItems().size() > 20);
      select(failures, 1);
      Label sentence = screen.find("sentence", Label.class);
      HeadlessScreen.waitUntil("the story is told", () -> sentence.getText().contains("floor"));
      ListView<?> story = screen.find("story", ListView.class);
      for (double letters : new double[] {14, 28}) {
        for (boolean dark : new boolean[] {false, true}) {
          look(dark, letters);
          String name = scenario + (dark ? "-dark-" : "-light-") + (letters > 20 ? "200" : "100");
          Screenshots.take(screen.scene(), name + "-end");
          select(story, 5);
          Screenshots.take(screen.scene(), name + "-moment");
          withChart(screen, name);
        }
      }
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().getRoot().getStyle())).contains("28");
    }
  }

  private static void withChart(HeadlessScreen screen, String name) {
    TabPane tabs = screen.find("story-tabs", TabPane.class);
    HeadlessScreen.onScreen(
        () -> {
          tabs.getSelectionModel().select(1);
          tabs.applyCss();
          tabs.layout();
          ticks(tabs).stream().limit(3).forEach(tick -> tick.setSelected(true));
          return tabs;
        });
    Screenshots.take(screen.scene(), name + "-levels");
    HeadlessScreen.onScreen(
        () -> {
          ticks(tabs).forEach(tick -> tick.setSelected(false));
          tabs.getSelectionModel().select(2);
          return tabs;
        });
    Screenshots.take(screen.scene(), name + "-ways");
    HeadlessScreen.onScreen(
        () -> {
          tabs.getSelectionModel().select(0);
          return tabs;
        });
  }

  private static List<CheckBox> ticks(TabPane tabs) {
    return tabs.lookupAll(".check-box").stream().map(CheckBox.class::cast).toList();
  }

  private static void select(ListView<?> list, int index) {
    HeadlessScreen.onScreen(
        () -> {
          list.getSelectionModel().select(index);
          return list;
        });
  }

  private static void look(boolean dark, double letters) {
    HeadlessScreen.onScreen(
        () -> {
          ViewApplication.LOOKS.dark().set(dark);
          ViewApplication.LOOKS.letters().set(letters);
          return letters;
        });
  }
}
