package dryfloor.app.view;

import dryfloor.model.Installation;
import java.util.Optional;
import javafx.application.Application;

/** The way in: opens a window and comes back when the last one is closed. */
public final class View {

  private static Optional<Installation> first = Optional.empty();

  private View() {}

  /** Opens a window with this drawing; to be called once. */
  public static void open(Installation drawing) {
    first = Optional.of(drawing);
    Application.launch(ViewApplication.class);
  }

  static Installation first() {
    return first.orElseThrow(
        () -> new IllegalStateException("the view is opened with View.open, not by its toolkit"));
  }
}
