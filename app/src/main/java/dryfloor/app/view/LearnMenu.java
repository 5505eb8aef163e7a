package dryfloor.app.view;

import dryfloor.app.shipped.Example;
import dryfloor.app.view.learn.Course;
import dryfloor.app.view.learn.Round;
import dryfloor.app.view.lesson.LessonDoor;
import dryfloor.app.view.lesson.LessonView;
import dryfloor.app.view.lesson.ScoresView;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Menu;

/** Begins lessons in a window; its drawing waits behind them as it is. */
final class LearnMenu {

  private final Program program;
  private final DrawingWindow window;

  private LearnMenu(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  static Menu of(Program program, DrawingWindow window) {
    return new LearnMenu(program, window).menu();
  }

  private Menu menu() {
    Menu menu = new Menu(Words.of("learn.menu"));
    menu.setId("menu-learn");
    menu.getItems()
        .setAll(
            MenuEntry.of(
                "learn.examples",
                "Shortcut+L",
                () -> learn(Words.of("learn.set.examples"), examples())),
            MenuEntry.of(
                "learn.here", "Shortcut+Shift+L", () -> learn(here(), List.of(window.drawing()))),
            MenuEntry.of("learn.scores", this::showScores));
    return menu;
  }

  private static List<Installation> examples() {
    return Arrays.stream(Example.values())
        .map(example -> Begun.with(example.content()).drawing())
        .toList();
  }

  /** What the exercises of the window's own drawing are called: its file, else its name. */
  private String here() {
    return window.file().path().map(Path::toString).orElseGet(() -> window.drawing().name());
  }

  private void learn(String set, List<Installation> drawings) {
    window.showInstead(
        LessonDoor.of(
            drawings, course -> window.showInstead(lesson(set, course)), window::showDrawing));
  }

  private LessonView lesson(String set, Course course) {
    return new LessonView(
        course,
        window.looks(),
        program.scores().of(set),
        done -> program.score(set, Round.of(done)),
        window::showDrawing);
  }

  private void showScores() {
    window.showInstead(new ScoresView(program::scores, program::forgetScore, window::showDrawing));
  }
}
