package dryfloor.app.view;

import javafx.animation.AnimationTimer;
import javafx.stage.Stage;

/**
 * Does something once a window has been painted for the first time: until then nothing else shall
 * keep the processors from it. To be made on the screen's thread.
 */
final class OncePainted extends AnimationTimer {

  /** It is told before each picture: the first is painted when it is told of the second. */
  private static final int SECOND = 2;

  private final Stage stage;
  private final Runnable task;
  private int pictures;

  private OncePainted(Stage stage, Runnable task) {
    this.stage = stage;
    this.task = task;
  }

  /** Does it soon, where the window is painted already. */
  static void run(Stage stage, Runnable task) {
    new OncePainted(stage, task).start();
  }

  @Override
  public void handle(long now) {
    if (stage.isShowing() && ++pictures == SECOND) {
      stop();
      task.run();
    }
  }
}
