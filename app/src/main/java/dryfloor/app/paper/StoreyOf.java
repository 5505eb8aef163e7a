package dryfloor.app.paper;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** On which storey somebody has to look for something. */
final class StoreyOf {

  private StoreyOf() {}

  /** The id of the storey; nothing for what the drawing gives no height. */
  static Optional<String> element(Installation drawing, String id) {
    return elevation(drawing, id).stream()
        .mapToObj(elevation -> drawing.storeyAt(elevation).id())
        .findFirst();
  }

  private static OptionalDouble elevation(Installation drawing, String id) {
    return Stream.of(
            drawing.floors().stream()
                .filter(floor -> floor.id().equals(id))
                .mapToDouble(Floor::elevation),
            drawing.vessels().stream()
                .filter(vessel -> vessel.id().equals(id))
                .mapToDouble(Vessel::rim),
            drawing.supplies().stream()
                .filter(supply -> supply.id().equals(id))
                .mapToDouble(Supply::elevation))
        .reduce(DoubleStream.empty(), DoubleStream::concat)
        .findFirst();
  }
}
