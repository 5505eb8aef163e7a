package dryfloor.app.view;

import javafx.application.Platform;

/**
 * What becomes of a mistake in the program itself: it is told in every window, and the work goes
 * on. The journal keeps what is unsaved whatever comes of it.
 */
final class Breakdowns {

  private Breakdowns() {}

  static void tellThrough(Program program) {
    Thread.UncaughtExceptionHandler tell =
        (thread, failure) -> {
          failure.printStackTrace();
          Platform.runLater(() -> program.tellBreakdown(failure));
        };
    Thread.setDefaultUncaughtExceptionHandler(tell);
    Thread.currentThread().setUncaughtExceptionHandler(tell);
  }
}
