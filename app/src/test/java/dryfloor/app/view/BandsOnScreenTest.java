package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TabPane;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;

/** Somebody asks how bad and how good it can be where values carry a tolerance. */
class BandsOnScreenTest {

  @Test
  void theBandOfTheFailureThatIsLookedAtAndWhatMattersMost() {
    try (HeadlessScreen screen = asked("tape-measure/as-drawn.json")) {
      Label state = screen.find("bands-state", Label.class);
      screen.click(screen.find("bands-search", Button.class), 20, 12);
      HeadlessScreen.waitUntil(
          "bands are told", () -> state.getText().contains("it hangs on them"));
      VBox cards = screen.find("bands", VBox.class);
      Button look =
          HeadlessScreen.onScreen(
              () ->
                  (Button)
                      cards.lookupAll(".button").stream()
                          .filter(
                              button ->
                                  button instanceof Button b
                                      && b.getAccessibleText()
                                          .endsWith("Power lost in the whole building"))
                          .findFirst()
                          .orElseThrow());
      HeadlessScreen.onScreen(
          () -> {
            look.fire();
            return look;
          });
      HeadlessScreen.waitUntil(
          "it is looked at", () -> screen.scene().lookup("#band-looked-at") != null);
      assertThat(HeadlessScreen.onScreen(screen.find("band-looked-at", Label.class)::getText))
          .isEqualTo(
              "At worst \u25b2 WET, at best \u25cf DRY. On floors: 0 L to 910 mL. Margin: −1 mm to"
                  + " 21 mm. Matters most: height of the siphon break.");
      Screenshots.take(screen.scene(), "bands-light");
    }
  }

  @Test
  void aDrawingThatIsExactIsNotAsked() {
    try (HeadlessScreen screen = asked("first-look/as-drawn.json")) {
      assertThat(HeadlessScreen.onScreen(screen.find("bands-search", Button.class)::isDisabled))
          .isTrue();
      assertThat(HeadlessScreen.onScreen(screen.find("bands-state", Label.class)::getText))
          .startsWith("No value of this drawing carries a tolerance.");
    }
  }

  /** Where the search takes long. */
  @Test
  void theSearchIsGivenUp() {
    try (HeadlessScreen screen = asked("tape-measure/as-drawn.json")) {
      Button search = screen.find("bands-search", Button.class);
      HeadlessScreen.onScreen(
          () -> {
            search.fire();
            return search;
          });
      Button end = screen.find("bands-search-cancel", Button.class);
      HeadlessScreen.onScreen(
          () -> {
            end.fire();
            return end;
          });
      HeadlessScreen.waitUntil(
          "it can be asked again", () -> screen.scene().lookup("#bands-search") != null);
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().lookup("#band-looked-at") == null))
          .isTrue();
    }
  }

  private static HeadlessScreen asked(String drawing) {
    HeadlessScreen screen = HeadlessScreen.with(drawing);
    screen.waitForAnswers();
    TabPane tabs = screen.find("story-tabs", TabPane.class);
    HeadlessScreen.onScreen(
        () -> {
          tabs.getSelectionModel().selectLast();
          return tabs;
        });
    return screen;
  }
}
