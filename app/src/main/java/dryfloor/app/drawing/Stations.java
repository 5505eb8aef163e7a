package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything that takes up room of its own along the storeys. */
final class Stations {

  /** Between pipes that run beside one another (m). */
  static final double PIPE_SPACING = 0.08;

  private static final double END_WIDTH = 0.16;

  private final Installation drawing;
  private final VesselTree tree;
  private final TankPlacer placer;
  private final double spacing;

  Stations(Installation drawing, VesselTree tree, double spacing) {
    this.drawing = drawing;
    this.spacing = spacing;
    this.tree = tree;
    this.placer = new TankPlacer(tree);
  }

  /** What an end at a floor is called, which has no station of its own otherwise. */
  static String floorOpening(Run run, RunEnd end) {
    return run.id() + "@" + end.at();
  }

  List<Station> all() {
    List<Station> stations = new ArrayList<>();
    for (Floor floor : drawing.floors()) {
      tree.groupsIn(floor.id()).forEach(group -> stations.add(vessels(floor, group)));
    }
    drawing.supplies().forEach(supply -> stations.add(supply(supply)));
    drawing.junctions().forEach(junction -> stations.add(junction(junction)));
    drawing.drains().forEach(drain -> stations.add(drain(drain)));
    for (Run run : drawing.runs()) {
      Stream.of(run.from(), run.to())
          .flatMap(end -> floorOpening(run, end, floorOf(end)).stream())
          .forEach(stations::add);
    }
    return stations;
  }

  private Optional<Floor> floorOf(RunEnd end) {
    return drawing.floors().stream().filter(floor -> floor.id().equals(end.at())).findFirst();
  }

  private Optional<Station> floorOpening(Run run, RunEnd end, Optional<Floor> floor) {
    return floor.map(
        at ->
            new Station(
                floorOpening(run, end),
                at.storey(),
                at.id(),
                List.of(floorOpening(run, end)),
                END_WIDTH,
                spacing));
  }

  private Station vessels(Floor floor, List<Vessel> group) {
    List<String> ids = new ArrayList<>();
    group.forEach(vessel -> collect(vessel, ids));
    return new Station(
        group.getFirst().id(), floor.storey(), floor.id(), ids, placer.width(group), margin(ids));
  }

  private void collect(Vessel vessel, List<String> ids) {
    ids.add(vessel.id());
    tree.groupsIn(vessel.id()).forEach(group -> group.forEach(inside -> collect(inside, ids)));
  }

  private double margin(List<String> ids) {
    long pipes =
        drawing.runs().stream()
            .filter(run -> ids.contains(run.from().at()) || ids.contains(run.to().at()))
            .count();
    return (pipes / 2 + 2) * spacing;
  }

  private Station supply(Supply supply) {
    return end(supply.id(), supply.elevation());
  }

  private Station junction(Junction junction) {
    return end(junction.id(), junction.elevation());
  }

  private Station drain(Drain drain) {
    return end(drain.id(), drain.elevation());
  }

  private Station end(String id, double elevation) {
    Storey storey = drawing.storeyAt(elevation);
    String room =
        drawing.floors().stream()
            .filter(floor -> floor.storey().equals(storey.id()))
            .map(Floor::id)
            .findFirst()
            .orElse("");
    return new Station(id, storey.id(), room, List.of(id), END_WIDTH, spacing);
  }
}
