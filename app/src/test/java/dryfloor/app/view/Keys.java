package dryfloor.app.view;

import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;

/** Keys as a hand presses them. */
final class Keys {

  private Keys() {}

  /** Holds all but the last and presses that. */
  static void press(KeyCode... keys) {
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.settle();
          Robot robot = new Robot();
          for (KeyCode key : keys) {
            robot.keyPress(key);
          }
          for (int i = keys.length - 1; i >= 0; i--) {
            robot.keyRelease(keys[i]);
          }
          return robot;
        });
  }
}
