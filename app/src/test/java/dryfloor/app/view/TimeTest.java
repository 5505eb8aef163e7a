package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.drawing.Shape;
import dryfloor.app.view.picture.PictureView;
import java.util.List;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Somebody follows a failure through time. */
class TimeTest {

  @Test
  void everyStepGoesToTheNextEventOfTheStory() {
    try (HeadlessScreen screen = failure("first-look/as-drawn.json")) {
      Label moment = screen.find("moment", Label.class);
      ListView<?> story = screen.find("story", ListView.class);
      String end = HeadlessScreen.onScreen(moment::getText);
      assertThat(end).startsWith("The end");

      screen.click(screen.find("time-track", Node.class), 70, 20);
      HeadlessScreen.waitUntil("time has gone back", () -> !moment.getText().equals(end));
      screen.press(KeyCode.HOME);
      HeadlessScreen.waitUntil("it begins", () -> moment.getText().equals("0 s after the failure"));
      int first = HeadlessScreen.onScreen(() -> story.getSelectionModel().getSelectedIndex());
      screen.press(KeyCode.RIGHT);
      HeadlessScreen.waitUntil(
          "the next event is told", () -> story.getSelectionModel().getSelectedIndex() > first);
      screen.press(KeyCode.LEFT);
      HeadlessScreen.waitUntil(
          "it is back at the beginning", () -> moment.getText().startsWith("0 s"));
    }
  }

  @Test
  void aSentenceOfTheStoryGoesToItsMoment() {
    try (HeadlessScreen screen = failure("first-look/as-drawn.json")) {
      ListView<?> story = screen.find("story", ListView.class);
      Label moment = screen.find("moment", Label.class);
      Label level = screen.find("moment-event", Label.class);
      screen.click(story, 60, 20);
      HeadlessScreen.waitUntil(
          "the first sentence is told", () -> story.getSelectionModel().getSelectedIndex() == 0);
      assertThat(HeadlessScreen.onScreen(moment::getText)).isEqualTo("0 s after the failure");
      assertThat(HeadlessScreen.onScreen(level::getText)).isNotEmpty();
      Screenshots.take(screen.scene(), "first-look-begins");
    }
  }

  @Test
  void playingMovesTimeUntilItIsPaused() {
    try (HeadlessScreen screen = failure("first-look/as-drawn.json")) {
      Label moment = screen.find("moment", Label.class);
      Button play = screen.find("play", Button.class);
      screen.click(play, 20, 12);
      HeadlessScreen.waitUntil("it has begun", () -> !moment.getText().startsWith("The end"));
      String early = HeadlessScreen.onScreen(moment::getText);
      HeadlessScreen.waitUntil("time passes", () -> !moment.getText().equals(early));
      screen.click(play, 20, 12);
      HeadlessScreen.waitUntil("it stands", () -> play.getText().contains("Play"));
    }
  }

  @Test
  void marksGoWithTheWaterWhileItPlaysAndNoneWhereMotionIsNotWanted() {
    try (HeadlessScreen screen = failure("first-look/as-drawn.json")) {
      PictureView picture = screen.find("picture", PictureView.class);
      Button play = screen.find("play", Button.class);
      assertThat(HeadlessScreen.onScreen(() -> marks(picture))).isEmpty();

      screen.click(play, 20, 12);
      HeadlessScreen.waitUntil("there are marks", () -> !marks(picture).isEmpty());
      List<Shape.Stream> early = HeadlessScreen.onScreen(() -> marks(picture));
      HeadlessScreen.waitUntil(
          "a mark goes on where it was", () -> marks(picture).stream().anyMatch(goneOn(early)));
      Screenshots.take(screen.scene(), "time-marks");

      HeadlessScreen.onScreen(
          () -> {
            HeadlessScreen.LOOKS.chooseStill(true);
            return play;
          });
      HeadlessScreen.waitUntil("nothing moves by itself", () -> marks(picture).isEmpty());
      assertThat(HeadlessScreen.onScreen(play::getText)).contains("Pause");
    } finally {
      HeadlessScreen.onScreen(
          () -> {
            HeadlessScreen.LOOKS.chooseStill(false);
            return true;
          });
    }
  }

  /** The same line as before, its marks elsewhere. */
  private static Predicate<Shape.Stream> goneOn(List<Shape.Stream> before) {
    return now ->
        before.stream()
            .anyMatch(
                then -> then.points().equals(now.points()) && then.travelled() != now.travelled());
  }

  private static List<Shape.Stream> marks(PictureView picture) {
    return picture.shown().stream()
        .filter(Shape.Stream.class::isInstance)
        .map(Shape.Stream.class::cast)
        .toList();
  }

  private static HeadlessScreen failure(String scenario) {
    HeadlessScreen screen = HeadlessScreen.with(scenario);
    ListView<?> failures = screen.find("failures", ListView.class);
    screen.waitForAnswers();
    HeadlessScreen.onScreen(
        () -> {
          failures.getSelectionModel().select(1);
          return failures;
        });
    Label sentence = screen.find("sentence", Label.class);
    HeadlessScreen.waitUntil("the story is told", () -> sentence.getText().contains("floor"));
    return screen;
  }
}
