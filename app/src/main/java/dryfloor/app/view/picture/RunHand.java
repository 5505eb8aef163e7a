package dryfloor.app.view.picture;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.view.Words;
import dryfloor.app.view.edit.Connection;
import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;

/** Leads a new run from where the mouse is pressed to where it is let go. */
public final class RunHand {

  private final PictureView picture;
  private final HandleLayer layer;
  private Optional<BuildingPicture> building = Optional.empty();
  private Optional<Led> led = Optional.empty();
  private Optional<Start> start = Optional.empty();

  /** Takes the two ends of a new run. */
  public interface Led {

    /** From one end to the other, so far apart sideways (m). */
    void between(Connection.End from, Connection.End to, double sideways);
  }

  /** Where the run begins: on the screen, and in the drawing. */
  private record Start(double x, double y, Connection.End end) {}

  RunHand(PictureView picture, HandleLayer layer) {
    this.picture = picture;
    this.layer = layer;
  }

  void show(BuildingPicture next) {
    building = Optional.of(next);
  }

  void start(Led taker) {
    led = Optional.of(taker);
    picture.setCursor(Cursor.CROSSHAIR);
    layer.say(Words.of("run.from"), picture.getWidth() / 2, 0);
  }

  boolean isActive() {
    return led.isPresent();
  }

  void press(double x, double y) {
    start = end(x, y).map(end -> new Start(x, y, end));
  }

  void drag(double x, double y) {
    start.ifPresent(
        begun -> {
          layer.line(begun.x(), begun.y(), x, y);
          layer.say(
              end(x, y)
                  .map(end -> Words.of("run.to", begun.end().id(), end.id()))
                  .orElseGet(() -> Words.of("run.nowhere", begun.end().id())),
              x,
              y);
        });
  }

  void release(double x, double y) {
    Optional<Led> taker = led;
    Optional<Start> begun = start;
    Optional<Connection.End> end = end(x, y);
    giveUp();
    begun.ifPresent(
        from ->
            end.filter(to -> !to.id().equals(from.end().id()))
                .ifPresent(
                    to ->
                        taker.ifPresent(
                            t ->
                                t.between(
                                    from.end(), to, Math.abs(across(x) - across(from.x()))))));
  }

  void giveUp() {
    led = Optional.empty();
    start = Optional.empty();
    layer.sayNothing();
    layer.mark(List.of(), Optional.empty());
    picture.setCursor(Cursor.DEFAULT);
  }

  private double across(double x) {
    return building.map(b -> b.acrossAt(picture.paperX(x))).orElse(0.0);
  }

  /** What a run can end at: single ends before vessels, vessels before floors. */
  private Optional<Connection.End> end(double x, double y) {
    double paperX = picture.paperX(x);
    double paperY = picture.paperY(y);
    return building.flatMap(
        b ->
            b.endAt(paperX, paperY)
                .or(() -> b.vesselAt(paperX, paperY))
                .or(() -> b.floorAt(paperX, paperY))
                .map(id -> new Connection.End(id, b.elevationAt(paperY))));
  }
}
