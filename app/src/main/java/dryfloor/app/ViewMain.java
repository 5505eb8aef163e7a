package dryfloor.app;

import dryfloor.app.view.View;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Starts the window by itself, as from a desktop: where nobody reads a terminal, what is wrong with
 * a file is told in the window.
 */
public final class ViewMain {

  private ViewMain() {}

  /** Opens the first file that is named, or what was open last. */
  public static void main(String[] arguments) {
    View.open(Arrays.stream(arguments).findFirst().map(Path::of));
    System.exit(0);
  }
}
