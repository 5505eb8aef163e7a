package dryfloor.app.view;

import dryfloor.app.view.file.WindowState;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.SplitPane;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Where a window stands on the screen, and where the last one stood. */
final class WindowPlace {

  /** Windows must not hide one another (points). */
  private static final double ASIDE = 28;

  private WindowPlace() {}

  /** Puts a window where the last one was, if a screen is there, else where the system likes. */
  static void give(Stage stage, Optional<WindowState> last, int others) {
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    stage.setWidth(Math.min(ViewApplication.WIDTH, room.getWidth()));
    stage.setHeight(Math.min(ViewApplication.HEIGHT, room.getHeight()));
    last.filter(WindowPlace::isOnScreen)
        .ifPresent(
            state -> {
              stage.setX(state.x() + ASIDE * others);
              stage.setY(state.y() + ASIDE * others);
              stage.setWidth(state.width());
              stage.setHeight(state.height());
              stage.setMaximized(state.maximized());
            });
  }

  private static boolean isOnScreen(WindowState state) {
    List<Screen> screens =
        Screen.getScreensForRectangle(state.x(), state.y(), state.width(), state.height());
    return !screens.isEmpty();
  }

  static WindowState of(Stage stage, List<Double> dividers) {
    return new WindowState(
        stage.getX(),
        stage.getY(),
        stage.getWidth(),
        stage.getHeight(),
        stage.isMaximized(),
        dividers);
  }

  /** Divides a window as another one was. */
  static void divide(SplitPane parts, List<Double> shares) {
    List<SplitPane.Divider> dividers = parts.getDividers();
    for (int i = 0; i < Math.min(dividers.size(), shares.size()); i++) {
      dividers.get(i).setPosition(shares.get(i));
    }
  }

  static List<Double> dividers(SplitPane parts) {
    return parts.getDividers().stream().map(SplitPane.Divider::getPosition).toList();
  }
}
