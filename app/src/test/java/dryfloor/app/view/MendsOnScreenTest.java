package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.panel.SearchBar;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Somebody looks for what mends a failure, applies it, and takes it back. */
class MendsOnScreenTest {

  private static final String UNION = "Return line comes apart at the pump union";

  @AfterEach
  void asItWas() {
    dark(false);
  }

  @Test
  void aMendIsAppliedWithOneClickAndUndone() {
    try (HeadlessScreen screen = looking()) {
      Label state = screen.find("mends-state", Label.class);
      screen.click(screen.find("mends-search", Button.class), 20, 12);
      HeadlessScreen.waitUntil("mends are told", () -> state.getText().startsWith("Mends, the"));
      List<String> found = changes(screen);
      assertThat(found.getFirst()).startsWith("Rim of the cellar vat: ");
      assertThat(found).anyMatch(change -> change.startsWith("Add a high-level cut-off"));
      Screenshots.take(screen.scene(), "mends-light");
      dark(true);
      Screenshots.take(screen.scene(), "mends-dark");
      dark(false);

      Button first = applies(screen).getFirst();
      assertThat(HeadlessScreen.onScreen(first::getAccessibleText)).contains(found.getFirst());
      screen.click(first, 15, 10);

      HeadlessScreen.waitUntil("it is stale", () -> state.getText().contains("changed since"));
      assertThat(applies(screen)).allMatch(Button::isDisabled);
      Label verdict = screen.find("verdict", Label.class);
      HeadlessScreen.waitUntil("it is mended", () -> verdict.getText().contains("CAUGHT"));
      Screenshots.take(screen.scene(), "mends-applied");

      screen.press(KeyCode.Z, KeyCode.CONTROL);
      HeadlessScreen.waitUntil("it is as it was", () -> verdict.getText().contains("WET"));
      assertThat(HeadlessScreen.onScreen(state::getText)).startsWith("Mends, the");
      assertThat(applies(screen)).noneMatch(Button::isDisabled);
    }
  }

  /** In a drawing in which the search takes so long that it can't be over before it is given up. */
  @Test
  void aSearchIsBegunWithAKeyAndGivenUpAndNeverBlocksTheScreen() {
    try (HeadlessScreen screen =
        looking("restaurant-seafood/as-drawn.json", "Power lost in the whole building")) {
      Button search = screen.find("mends-search", Button.class);
      HeadlessScreen.onScreen(
          () -> {
            search.requestFocus();
            return search;
          });
      screen.press(KeyCode.SPACE);
      HeadlessScreen.waitUntil(
          "it searches, and the keys are with what ends it",
          () ->
              screen.scene().lookup("#mends-search-cancel") instanceof Button end
                  && end.isFocused());
      Button end = screen.find("mends-search-cancel", Button.class);
      HeadlessScreen.onScreen(
          () -> {
            end.fire();
            return end;
          });
      HeadlessScreen.waitUntil("it has stopped", () -> search.getParent() instanceof SearchBar);
      assertThat(changes(screen)).isEmpty();
    }
  }

  @Test
  void aFailureThatWetsNoFloorNeedsNoMend() {
    try (HeadlessScreen screen = looking()) {
      choose(screen, "Main drain clogged");
      assertThat(HeadlessScreen.onScreen(screen.find("mends-state", Label.class)::getText))
          .contains("Choose a failure that wets a floor");
      assertThat(screen.find("mends-search", Button.class).isDisabled()).isTrue();
    }
  }

  private static HeadlessScreen looking() {
    return looking("first-look/as-drawn.json", UNION);
  }

  private static HeadlessScreen looking(String drawing, String failure) {
    HeadlessScreen screen = HeadlessScreen.with(drawing);
    screen.waitForAnswers();
    choose(screen, failure);
    TabPane tabs = screen.find("story-tabs", TabPane.class);
    HeadlessScreen.onScreen(
        () -> {
          tabs.getTabs().stream()
              .filter(tab -> tab.getText().equals(Words.of("mends.title")))
              .forEach(tabs.getSelectionModel()::select);
          return tabs;
        });
    return screen;
  }

  private static void choose(HeadlessScreen screen, String failure) {
    ListView<?> failures = screen.find("failures", ListView.class);
    HeadlessScreen.onScreen(
        () -> {
          for (int i = 0; i < failures.getItems().size(); i++) {
            if (failures.getItems().get(i).toString().contains(failure)) {
              failures.getSelectionModel().select(i);
            }
          }
          return failures;
        });
    Label shown = screen.find("shown", Label.class);
    HeadlessScreen.waitUntil("it is shown", () -> shown.getText().contains(failure));
  }

  private static List<String> changes(HeadlessScreen screen) {
    VBox mends = screen.find("mends", VBox.class);
    return HeadlessScreen.onScreen(
        () ->
            mends.getChildren().stream()
                .map(card -> ((Label) ((VBox) card).getChildren().getFirst()).getText())
                .toList());
  }

  private static List<Button> applies(HeadlessScreen screen) {
    VBox mends = screen.find("mends", VBox.class);
    return HeadlessScreen.onScreen(
        () ->
            mends.getChildren().stream()
                .map(card -> ((VBox) card).getChildren().getLast())
                .map(Button.class::cast)
                .toList());
  }

  private static void dark(boolean dark) {
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.LOOKS.dark().set(dark);
          return dark;
        });
  }
}
