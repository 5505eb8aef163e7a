package dryfloor.app.view.picture;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/** Says what flows where the mouse points; the same stands as text beside the picture. */
public final class FlowTip {

  /** So far from the mouse (points), so that it does not hide what it tells of. */
  private static final double AWAY = 14;

  private final Node over;
  private final Tooltip tip = new Tooltip();

  /** A tip over this part of the window. */
  public FlowTip(Node over) {
    this.over = over;
    over.addEventHandler(MouseEvent.MOUSE_EXITED, event -> tip.hide());
    over.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> tip.hide());
  }

  /** Says this at a point of the screen, or nothing any more. */
  public void show(Optional<String> words, double x, double y) {
    words.ifPresentOrElse(
        text -> {
          tip.setText(text);
          tip.show(over, x + AWAY, y + AWAY);
        },
        tip::hide);
  }
}
