package dryfloor.app.view;

import dryfloor.app.shipped.Example;
import dryfloor.app.view.lesson.LessonDoor;
import dryfloor.app.view.lesson.LessonView;
import dryfloor.model.Installation;
import java.util.Arrays;
import java.util.List;
import javafx.scene.Parent;
import javafx.scene.control.Menu;

/** Begins lessons in a window; its drawing waits behind them as it is. */
final class LearnMenu {

  private LearnMenu() {}

  static Menu of(DrawingWindow window) {
    Menu menu = new Menu(Words.of("learn.menu"));
    menu.setId("menu-learn");
    menu.getItems()
        .setAll(
            MenuEntry.of("learn.examples", "Shortcut+L", () -> learn(window, examples())),
            MenuEntry.of(
                "learn.here", "Shortcut+Shift+L", () -> learn(window, List.of(window.drawing()))));
    return menu;
  }

  private static List<Installation> examples() {
    return Arrays.stream(Example.values())
        .map(example -> Begun.with(example.content()).drawing())
        .toList();
  }

  private static void learn(DrawingWindow window, List<Installation> drawings) {
    Runnable back = window::showDrawing;
    show(
        window,
        LessonDoor.of(drawings, course -> show(window, new LessonView(course, back)), back));
  }

  private static void show(DrawingWindow window, Parent root) {
    window.stage().getScene().setRoot(root);
    root.requestFocus();
  }
}
