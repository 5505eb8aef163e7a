package dryfloor.app.view.work;

import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Which element or part of the drawing is being worked on, by its id. */
public final class Selection {

  private final Work work;
  private final ReadOnlyObjectWrapper<Optional<String>> id =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /** Nothing is chosen; what is taken out of the drawing is chosen no more. */
  public Selection(Work work) {
    this.work = work;
    work.installation()
        .addListener(
            (drawing, before, now) ->
                id.get().filter(chosen -> !ids(now).contains(chosen)).ifPresent(gone -> clear()));
  }

  /** Id of what is chosen. */
  public ReadOnlyObjectProperty<Optional<String>> id() {
    return id.getReadOnlyProperty();
  }

  public void choose(String chosen) {
    id.set(Optional.of(chosen));
  }

  public void clear() {
    id.set(Optional.empty());
  }

  /** Goes on to the next or the one before in the order of the drawing, round and round. */
  public void step(int by) {
    List<String> all = ids(work.installation().get());
    if (!all.isEmpty()) {
      int start = by > 0 ? -1 : 0;
      int here = id.get().map(all::indexOf).orElse(start);
      choose(all.get(Math.floorMod(here + by, all.size())));
    }
  }

  /** Ids of all elements, and of the parts behind their runs. */
  private static List<String> ids(Installation drawing) {
    return drawing.elements().flatMap(Selection::ids).toList();
  }

  private static Stream<String> ids(Element element) {
    return element instanceof Run run
        ? Stream.concat(Stream.of(run.id()), run.parts().stream().map(Part::id))
        : Stream.of(element.id());
  }
}
