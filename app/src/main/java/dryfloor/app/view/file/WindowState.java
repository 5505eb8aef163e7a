package dryfloor.app.view.file;

import java.util.List;

/**
 * Where a window was and how it was divided. Lengths in points of the screen.
 *
 * @param x of its top left corner
 * @param y of its top left corner
 * @param maximized whether it filled the screen
 * @param dividers where its parts meet, as shares of its width
 */
public record WindowState(
    double x, double y, double width, double height, boolean maximized, List<Double> dividers) {

  public WindowState {
    dividers = List.copyOf(dividers);
  }

  /** Whether a window can be like this at all. */
  boolean isSensible() {
    return Double.isFinite(x)
        && Double.isFinite(y)
        && width >= 200
        && width <= 20_000
        && height >= 150
        && height <= 20_000
        && dividers.stream().allMatch(share -> share >= 0 && share <= 1);
  }
}
