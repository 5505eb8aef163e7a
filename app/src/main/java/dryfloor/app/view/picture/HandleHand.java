package dryfloor.app.view.picture;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Handle;
import dryfloor.app.drawing.Point;
import dryfloor.app.report.Wording;
import dryfloor.app.view.edit.Pull;
import dryfloor.app.view.picture.HandlePicker.OnScreen;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;

/**
 * Takes hold of heights in the picture and moves them. One pull is one change of the drawing, so
 * that one undo takes it back whole.
 */
final class HandleHand {

  private final PictureView picture;
  private final HandleLayer layer;
  private final Work work;
  private final Selection selection;
  private final ObservableValue<Units> units;
  private Optional<BuildingPicture> building = Optional.empty();
  private List<Handle> handles = List.of();
  private Optional<Handle> meant = Optional.empty();
  private Optional<Grasp> grasp = Optional.empty();

  /** A pull under way: how far off its handle the mouse took it (m), and whether it moved yet. */
  private record Grasp(Pull pull, double off, boolean begun) {}

  HandleHand(
      PictureView picture,
      HandleLayer layer,
      Work work,
      Selection selection,
      ObservableValue<Units> units) {
    this.picture = picture;
    this.layer = layer;
    this.work = work;
    this.selection = selection;
    this.units = units;
    picture.paintings().addListener((paintings, before, now) -> mark());
    selection.id().addListener((id, before, now) -> mean(now));
  }

  void show(BuildingPicture next) {
    building = Optional.of(next);
    handles = next.handles();
    meant = meant.flatMap(this::present);
    mark();
  }

  private Optional<Handle> present(Handle old) {
    return handles.stream().filter(old::setsTheSameAs).findFirst();
  }

  /** The first handle of what was chosen is meant, unless another one of it is already. */
  private void mean(Optional<String> chosen) {
    if (!meant.map(Handle::id).equals(chosen)) {
      meant = chosen.flatMap(id -> handles.stream().filter(h -> h.id().equals(id)).findFirst());
    }
    mark();
  }

  /** The next handle of what is chosen. */
  void next() {
    List<Handle> own = ownHandles();
    if (!own.isEmpty()) {
      int here = meant.map(own::indexOf).orElse(-1);
      meant = Optional.of(own.get((here + 1) % own.size()));
      mark();
      sayAtHandle(List.of());
    }
  }

  private List<Handle> ownHandles() {
    return handles.stream()
        .filter(handle -> Optional.of(handle.id()).equals(selection.id().get()))
        .toList();
  }

  boolean holds() {
    return grasp.isPresent();
  }

  /** The handle at a point of the screen. */
  Optional<Handle> at(double x, double y) {
    return HandlePicker.at(
            handles.stream().map(this::onScreen).toList(), x, y, selection.id().get())
        .map(OnScreen::handle);
  }

  /** What is drawn at a point of the screen, by its id. */
  Optional<String> idAt(double x, double y) {
    return building.flatMap(
        b -> {
          double paperX = picture.paperX(x);
          double paperY = picture.paperY(y);
          return b.endAt(paperX, paperY)
              .or(() -> b.idAt(paperX, paperY))
              .or(() -> b.floorAt(paperX, paperY));
        });
  }

  void hover(Optional<Handle> handle, double x, double y) {
    handle.ifPresentOrElse(
        over -> {
          layer.mark(
              ownHandles().stream().map(this::onScreen).toList(), handle.map(this::onScreen));
          layer.say(HandleWords.of(over, wording()), x, y);
        },
        () -> {
          layer.sayNothing();
          mark();
        });
  }

  void take(Handle handle, double y) {
    meant = Optional.of(handle);
    selection.choose(handle.id());
    grasp =
        Optional.of(
            new Grasp(
                new Pull(work.installation().get(), handle),
                handle.elevation() - elevationAt(y),
                false));
    mark();
  }

  void moveTo(double x, double y) {
    grasp.ifPresent(
        held -> {
          Pull.Reached reached = held.pull().to(elevationAt(y) + held.off());
          boolean moved = held.begun() || !reached.drawing().equals(work.installation().get());
          grasp = Optional.of(new Grasp(held.pull(), held.off(), moved));
          put(reached.drawing(), held.begun());
          say(reached.limit(), x, y);
        });
  }

  private void put(Installation drawing, boolean begun) {
    if (begun) {
      work.amend(drawing);
    } else {
      work.change(drawing);
    }
  }

  void letGo() {
    grasp = Optional.empty();
    layer.sayNothing();
  }

  /** Lets go and puts everything back to where it was taken. */
  void giveUp() {
    boolean moved = grasp.map(Grasp::begun).orElse(false);
    letGo();
    if (moved) {
      work.undo();
    }
  }

  /** Moves the handle that is meant up by so many millimetres. */
  boolean nudge(int millimetres) {
    meant.ifPresent(
        handle -> {
          Pull.Reached reached = new Pull(work.installation().get(), handle).by(millimetres);
          work.change(reached.drawing());
          sayAtHandle(reached.limit());
        });
    return meant.isPresent();
  }

  private void sayAtHandle(List<Finding> limit) {
    meant
        .map(this::onScreen)
        .ifPresent(shown -> say(limit, (shown.left() + shown.right()) / 2, shown.y()));
  }

  private void say(List<Finding> limit, double x, double y) {
    meant.ifPresent(
        handle -> {
          String height = HandleWords.of(handle, wording());
          String why = limit.isEmpty() ? "" : "\n" + limit.getFirst().message();
          layer.say(height + why, x, y);
          picture.setAccessibleText(height + why);
        });
  }

  private Wording wording() {
    return Wording.of(work.installation().get(), units.getValue());
  }

  private double elevationAt(double y) {
    return building.map(b -> b.elevationAt(picture.paperY(y))).orElse(0.0);
  }

  private OnScreen onScreen(Handle handle) {
    return building
        .map(
            b -> {
              Point left = b.onPaper(new Point(handle.left(), handle.elevation()));
              Point right = b.onPaper(new Point(handle.right(), handle.elevation()));
              return new OnScreen(
                  handle,
                  picture.screenX(left.x()),
                  picture.screenX(right.x()),
                  picture.screenY(left.y()));
            })
        .orElseThrow();
  }

  private void mark() {
    layer.mark(ownHandles().stream().map(this::onScreen).toList(), meant.map(this::onScreen));
    layer.ring(
        selection
            .id()
            .get()
            .filter(id -> ownHandles().isEmpty())
            .flatMap(id -> building.flatMap(b -> b.place(id)))
            .map(at -> new Point(picture.screenX(at.x()), picture.screenY(at.y()))));
  }
}
