package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Somebody types values for what is drawn. */
class SheetTest {

  @Test
  void aTypedLevelChangesTheVerdicts() {
    try (HeadlessScreen screen = withSumpChosen()) {
      type(screen, "field-level", "490 mm");

      Label count = screen.find("changes-count", Label.class);
      HeadlessScreen.waitUntil("something is worse", () -> count.getText().contains("worse"));
      assertThat(screen.find("changes", ListView.class).getItems().toString())
          .contains("Power lost in the whole building");
      Screenshots.take(screen.scene(), "sheet-typed");
    }
  }

  @Test
  void aLevelAboveTheRimShowsItsProblemAndChangesNothing() {
    try (HeadlessScreen screen = withSumpChosen()) {
      type(screen, "field-level", "600 mm");

      HeadlessScreen.waitUntil(
          "the problem is told", () -> screen.scene().lookup("#problem-level") != null);
      assertThat(HeadlessScreen.onScreen(screen.find("problem-level", Label.class)::getText))
          .contains("above the rim")
          .contains("at most 500 mm");
      assertThat(HeadlessScreen.onScreen(screen.find("stale-word", Label.class)::isVisible))
          .isFalse();
      Screenshots.take(screen.scene(), "sheet-refused");

      screen.press(KeyCode.ESCAPE);
      TextField level = screen.find("field-level", TextField.class);
      String restored = HeadlessScreen.onScreen(() -> level.getText());
      assertThat(restored).isEqualTo("262 mm");
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().lookup("#problem-level") == null))
          .isTrue();
    }
  }

  @Test
  void whatIsRefusedIsListedAndAClickGoesToItsField() {
    try (HeadlessScreen screen = withSumpChosen()) {
      Label count = screen.find("findings-count", Label.class);
      type(screen, "field-level", "600 mm");
      type(screen, "field-name", "Filter vat");

      TextField level = screen.find("field-level", TextField.class);
      String kept = HeadlessScreen.onScreen(() -> level.getText());
      assertThat(kept).isEqualTo("600 mm");
      ListView<?> findings = screen.find("findings", ListView.class);
      HeadlessScreen.waitUntil("it is listed", () -> findings.getItems().size() == 1);
      assertThat(HeadlessScreen.onScreen(count::getText)).isEqualTo("To be looked at: 1");
      HeadlessScreen.waitUntil(
          "it is told by its present name",
          () ->
              findings
                  .getItems()
                  .toString()
                  .contains("Not taken over, Filter vat: the water stands 100 mm above the rim"));
      Screenshots.take(screen.scene(), "sheet-refused-listed");

      screen.click(findings, 30, 15);
      HeadlessScreen.waitUntil("the keys are in its field", level::isFocused);

      type(screen, "field-level", "262 mm");
      HeadlessScreen.waitUntil("nothing is refused", () -> findings.getItems().isEmpty());
      assertThat(HeadlessScreen.onScreen(count::getText)).isEqualTo("Nothing to be looked at.");
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().lookup("#problem-level") == null))
          .isTrue();
    }
  }

  private static HeadlessScreen withSumpChosen() {
    HeadlessScreen screen = HeadlessScreen.with("first-look/as-drawn.json");
    screen.waitForAnswers();
    Node picture = screen.find("picture", Node.class);
    HeadlessScreen.onScreen(
        () -> {
          picture.requestFocus();
          return picture;
        });
    Label heading = screen.find("sheet-heading", Label.class);
    for (int steps = 0; steps < 30 && !heading.getText().endsWith("Sump"); steps++) {
      screen.press(KeyCode.RIGHT);
    }
    assertThat(heading.getText()).isEqualTo("Vessel: Sump");
    HeadlessScreen.onScreen(
        () -> {
          ((SideTabs) screen.scene().lookup("#side-tabs")).showDrawing();
          return picture;
        });
    return screen;
  }

  private static void type(HeadlessScreen screen, String field, String text) {
    TextField level = screen.find(field, TextField.class);
    HeadlessScreen.onScreen(
        () -> {
          level.requestFocus();
          level.setText(text);
          return level;
        });
    screen.press(KeyCode.ENTER);
  }
}
