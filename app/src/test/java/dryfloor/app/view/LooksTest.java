package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.unit.Units;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Somebody likes it dark, or thinks in gallons. */
class LooksTest {

  @AfterEach
  void asItWas() {
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.LOOKS.dark().set(false);
          HeadlessScreen.LOOKS.units().set(Units.METRIC);
          return true;
        });
  }

  @Test
  void aKeyMakesTheWindowAndThePictureDark() {
    try (HeadlessScreen screen = listed()) {
      assertThat(brightness(screen)).isGreaterThan(0.8);

      screen.press(KeyCode.D, KeyCode.CONTROL);

      HeadlessScreen.waitUntil("it is dark", () -> HeadlessScreen.LOOKS.dark().get());
      assertThat(Application.getUserAgentStylesheet()).contains("dark");
      assertThat(brightness(screen)).isLessThan(0.3);
    }
  }

  @Test
  void litresBecomeGallons() {
    try (HeadlessScreen screen = listed()) {
      ListView<?> failures = screen.find("failures", ListView.class);
      HeadlessScreen.onScreen(
          () -> {
            failures.getSelectionModel().select(1);
            return failures;
          });
      Label sentence = screen.find("sentence", Label.class);
      HeadlessScreen.waitUntil("litres are told", () -> sentence.getText().contains(" L "));

      HeadlessScreen.onScreen(
          () -> {
            HeadlessScreen.LOOKS.units().set(Units.US);
            return true;
          });

      HeadlessScreen.waitUntil("gallons are told", () -> sentence.getText().contains(" gal "));
    }
  }

  /** Of the paper at the edge of the picture. */
  private static double brightness(HeadlessScreen screen) {
    Node picture = screen.find("picture", Node.class);
    WritableImage image = HeadlessScreen.onScreen(() -> picture.snapshot(null, null));
    Color corner = image.getPixelReader().getColor(4, 4);
    return corner.getBrightness();
  }

  private static HeadlessScreen listed() {
    HeadlessScreen screen = HeadlessScreen.with("first-look/as-drawn.json");
    screen.waitForAnswers();
    return screen;
  }
}
