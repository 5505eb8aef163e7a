package dryfloor.app.view;

import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;

/** The way in: opens a window and comes back when the last one is closed. */
public final class View {

  private static Optional<Path> first = Optional.empty();

  private View() {}

  /** Opens a window with this file, or with what was open last; to be called once. */
  public static void open(Optional<Path> file) {
    first = file;
    Application.launch(ViewApplication.class);
  }

  static Optional<Path> first() {
    return first;
  }
}
