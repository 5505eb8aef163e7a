package dryfloor.app.view.picture;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Handle;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.unit.Units;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;

/**
 * The picture in which heights can be dragged and things chosen. Where there is no handle under the
 * mouse, it moves as any picture does.
 *
 * <p>Keys: left and right go from thing to thing, space from handle to handle of one thing, up and
 * down move a handle by 1 mm, with shift by 10 mm; escape gives up.
 */
public final class EditingPicture extends StackPane {

  private static final int FINE = 1;
  private static final int COARSE = 10;

  private final PictureView picture;
  private final Selection selection;
  private final HandleHand hand;
  private final RunHand runs;
  private Runnable onChosen = () -> {};
  private Runnable onDelete = () -> {};

  /** Puts handles over a picture. */
  public EditingPicture(
      PictureView picture, Work work, Selection selection, ObservableValue<Units> units) {
    this.picture = picture;
    this.selection = selection;
    HandleLayer layer = new HandleLayer();
    getChildren().addAll(picture, layer);
    picture.setAccessibleText(Words.of("picture.spoken"));
    hand = new HandleHand(picture, layer, work, selection, units);
    runs = new RunHand(picture, layer);
    picture.addEventFilter(MouseEvent.MOUSE_MOVED, this::hover);
    picture.addEventFilter(MouseEvent.MOUSE_PRESSED, this::press);
    picture.addEventFilter(MouseEvent.MOUSE_DRAGGED, this::drag);
    picture.addEventFilter(MouseEvent.MOUSE_RELEASED, this::release);
    picture.addEventHandler(KeyEvent.KEY_PRESSED, this::type);
  }

  /** The building is drawn like this now. */
  public void show(BuildingPicture building) {
    hand.show(building);
    runs.show(building);
  }

  /** The next pull of the mouse leads a new run from one place to another. */
  public void startRun(RunHand.Led led) {
    runs.start(led);
    picture.requestFocus();
  }

  /** What to do when what is chosen is to be deleted. */
  public void setOnDelete(Runnable action) {
    onDelete = action;
  }

  /** What to do when something was chosen by a click. */
  public void setOnChosen(Runnable action) {
    onChosen = action;
  }

  private void hover(MouseEvent event) {
    if (hand.holds() || runs.isActive()) {
      return;
    }
    Optional<Handle> handle = hand.at(event.getX(), event.getY());
    picture.setCursor(handle.isPresent() ? Cursor.V_RESIZE : Cursor.DEFAULT);
    hand.hover(handle, event.getX(), event.getY());
  }

  private void press(MouseEvent event) {
    if (runs.isActive()) {
      runs.press(event.getX(), event.getY());
      event.consume();
    } else if (event.getButton() == MouseButton.PRIMARY) {
      hand.at(event.getX(), event.getY())
          .ifPresent(
              handle -> {
                picture.requestFocus();
                hand.take(handle, event.getY());
                event.consume();
              });
    }
  }

  private void drag(MouseEvent event) {
    if (runs.isActive()) {
      runs.drag(event.getX(), event.getY());
      event.consume();
    } else if (hand.holds()) {
      hand.moveTo(event.getX(), event.getY());
      event.consume();
    }
  }

  private void release(MouseEvent event) {
    if (runs.isActive()) {
      runs.release(event.getX(), event.getY());
      event.consume();
    } else if (hand.holds()) {
      hand.letGo();
      if (event.isStillSincePress()) {
        onChosen.run();
      }
      event.consume();
    } else if (event.getButton() == MouseButton.PRIMARY && event.isStillSincePress()) {
      hand.idAt(event.getX(), event.getY()).ifPresentOrElse(this::choose, selection::clear);
    }
  }

  private void choose(String id) {
    selection.choose(id);
    onChosen.run();
  }

  private void type(KeyEvent event) {
    int step = event.isShiftDown() ? COARSE : FINE;
    boolean used =
        !event.isShortcutDown()
            && !event.isAltDown()
            && switch (event.getCode()) {
              case UP -> hand.nudge(step);
              case DOWN -> hand.nudge(-step);
              case LEFT -> stepped(-1);
              case RIGHT -> stepped(1);
              case SPACE -> done(hand::next);
              case DELETE, BACK_SPACE -> done(onDelete);
              case ESCAPE -> done(this::giveUp);
              default -> false;
            };
    if (used) {
      event.consume();
    }
  }

  private void giveUp() {
    if (runs.isActive()) {
      runs.giveUp();
    } else if (hand.holds()) {
      hand.giveUp();
    } else {
      selection.clear();
    }
  }

  private boolean stepped(int by) {
    return done(() -> selection.step(by));
  }

  private static boolean done(Runnable action) {
    action.run();
    return true;
  }
}
