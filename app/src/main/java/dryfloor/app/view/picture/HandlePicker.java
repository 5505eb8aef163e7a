package dryfloor.app.view.picture;

import dryfloor.app.drawing.Handle;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the handle under the mouse. Distances are points of the screen, so that a handle is as easy
 * to take however far away the picture is; a point comes before a line on which it lies.
 */
final class HandlePicker {

  private static final double POINT_REACH = 9;
  private static final double LINE_REACH = 5;

  /** A handle on the screen: it begins at {@code left} and ends at {@code right}. */
  record OnScreen(Handle handle, double left, double right, double y) {

    double distance(double x, double mouseY) {
      double beside = Math.max(0, Math.max(left - x, x - right));
      return Math.hypot(beside, mouseY - y);
    }

    boolean isReached(double x, double mouseY) {
      return distance(x, mouseY) <= (handle.isLine() ? LINE_REACH : POINT_REACH);
    }
  }

  private HandlePicker() {}

  /**
   * The handle at a point of the screen.
   *
   * @param favourite id of the component whose handles come first
   */
  static Optional<OnScreen> at(
      List<OnScreen> handles, double x, double y, Optional<String> favourite) {
    return handles.stream()
        .filter(handle -> handle.isReached(x, y))
        .min(
            Comparator.<OnScreen, Boolean>comparing(
                    handle -> !Optional.of(handle.handle().id()).equals(favourite))
                .thenComparing(handle -> handle.handle().isLine())
                .thenComparingDouble(handle -> handle.distance(x, y)));
  }
}
