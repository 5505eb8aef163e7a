package dryfloor.app.view.lesson;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.view.picture.PictureView;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;

/** Drags the expected levels in the picture: press in a vessel that is asked for, and pull. */
final class LevelHand {

  private final PictureView picture;
  private Optional<GuessPanel> asking = Optional.empty();
  private Optional<BuildingPicture> building = Optional.empty();
  private Optional<Grip> grip = Optional.empty();

  /**
   * A level in the hand.
   *
   * @param above how far the level stands above the mouse (m)
   */
  private record Grip(String vessel, double above) {}

  LevelHand(PictureView picture) {
    this.picture = picture;
    picture.addEventFilter(MouseEvent.MOUSE_MOVED, this::hover);
    picture.addEventFilter(MouseEvent.MOUSE_PRESSED, this::press);
    picture.addEventFilter(MouseEvent.MOUSE_DRAGGED, this::drag);
    picture.addEventFilter(MouseEvent.MOUSE_RELEASED, this::release);
  }

  /** The levels that this panel asks for can be dragged from now on. */
  void ask(GuessPanel panel) {
    asking = Optional.of(panel);
  }

  /** The building is drawn like this now. */
  void show(BuildingPicture next) {
    building = Optional.of(next);
  }

  /** Nothing is asked any more. */
  void rest() {
    asking = Optional.empty();
    grip = Optional.empty();
    picture.setCursor(Cursor.DEFAULT);
  }

  private Optional<Grip> at(MouseEvent event) {
    return building.flatMap(
        shown ->
            shown
                .vesselAt(picture.paperX(event.getX()), picture.paperY(event.getY()))
                .flatMap(
                    id ->
                        asking
                            .flatMap(panel -> panel.level(id))
                            .map(level -> new Grip(id, level - elevation(shown, event)))));
  }

  private double elevation(BuildingPicture shown, MouseEvent event) {
    return shown.elevationAt(picture.paperY(event.getY()));
  }

  private void hover(MouseEvent event) {
    picture.setCursor(at(event).isPresent() ? Cursor.V_RESIZE : Cursor.DEFAULT);
  }

  private void press(MouseEvent event) {
    grip = at(event);
    if (grip.isPresent()) {
      picture.requestFocus();
      event.consume();
    }
  }

  private void drag(MouseEvent event) {
    grip.ifPresent(
        held -> {
          building.ifPresent(
              shown ->
                  asking.ifPresent(
                      panel ->
                          panel.expect(held.vessel(), elevation(shown, event) + held.above())));
          event.consume();
        });
  }

  private void release(MouseEvent event) {
    if (grip.isPresent()) {
      grip = Optional.empty();
      event.consume();
    }
  }
}
