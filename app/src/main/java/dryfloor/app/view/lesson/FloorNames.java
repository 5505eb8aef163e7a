package dryfloor.app.view.lesson;

import dryfloor.model.element.Floor;
import java.util.Optional;
import javafx.util.StringConverter;

/** What floors are called in a list of them. */
final class FloorNames extends StringConverter<Floor> {

  private final GuessScene scene;

  FloorNames(GuessScene scene) {
    this.scene = scene;
  }

  @Override
  public String toString(Floor floor) {
    return Optional.ofNullable(floor).map(one -> scene.name(one.id())).orElse("");
  }

  @Override
  public Floor fromString(String name) {
    throw new IllegalStateException("floors are chosen, never typed");
  }
}
