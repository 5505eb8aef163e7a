package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes the plan: stations, then the vessels in them, then the pipes between them. */
final class Planner {

  private final Installation drawing;
  private final VesselTree tree;
  private final Map<Station, Double> leftEnds;
  private final Map<String, Tank> tanks = new LinkedHashMap<>();
  private final Map<String, Point> ends = new LinkedHashMap<>();
  private final double width;

  private final double spacing;

  /**
   * The planner of a drawing.
   *
   * @param spacing between pipes that run beside vessels (m)
   */
  Planner(Installation drawing, double spacing) {
    this.drawing = drawing;
    this.spacing = spacing;
    this.tree = new VesselTree(drawing);
    this.leftEnds = Arrangement.of(drawing, new Stations(drawing, tree, spacing).all());
    this.width =
        leftEnds.entrySet().stream()
            .mapToDouble(e -> e.getValue() + e.getKey().width() + e.getKey().margin())
            .max()
            .orElse(1);
  }

  Plan plan() {
    placeTanks();
    placeEnds();
    List<Storey> storeys =
        drawing.storeys().stream()
            .sorted(Comparator.comparingDouble(Storey::elevation).reversed())
            .toList();
    PipeRouter router = new PipeRouter(drawing, tanks, ends, leftEnds, spacing);
    List<Pipe> pipes = drawing.runs().stream().map(router::pipe).toList();
    return new Plan(drawing, width, storeys, rooms(), tanks, pipes, ends);
  }

  private void placeTanks() {
    TankPlacer placer = new TankPlacer(tree);
    for (Floor floor : drawing.floors()) {
      tree.groupsIn(floor.id())
          .forEach(
              group ->
                  leftEnds.forEach(
                      (station, left) -> {
                        if (station.key().equals(group.getFirst().id())) {
                          placer.place(group, left, 0, tanks);
                        }
                      }));
    }
  }

  private void placeEnds() {
    Map<String, Double> elevations = new HashMap<>();
    drawing.supplies().forEach(supply -> elevations.put(supply.id(), supply.elevation()));
    drawing.junctions().forEach(junction -> elevations.put(junction.id(), junction.elevation()));
    drawing.drains().forEach(drain -> elevations.put(drain.id(), drain.elevation()));
    for (Run run : drawing.runs()) {
      floorOpening(run, run.from(), elevations);
      floorOpening(run, run.to(), elevations);
    }
    leftEnds.forEach(
        (station, left) -> {
          if (elevations.containsKey(station.key())) {
            ends.put(
                station.key(),
                new Point(left + station.width() / 2, elevations.getOrDefault(station.key(), 0.0)));
          }
        });
  }

  private static void floorOpening(Run run, RunEnd end, Map<String, Double> elevations) {
    if (end instanceof RunEnd.Opening opening) {
      elevations.put(Stations.floorOpening(run, end), opening.elevation());
    }
  }

  /** Rooms share their storey at the middles between their outermost stations. */
  private List<Plan.Room> rooms() {
    List<Plan.Room> rooms = new ArrayList<>();
    for (Storey storey : drawing.storeys()) {
      List<Floor> inOrder =
          drawing.floors().stream()
              .filter(floor -> floor.storey().equals(storey.id()))
              .sorted(Comparator.comparingDouble(this::leftmost))
              .toList();
      double left = 0;
      for (int i = 0; i < inOrder.size(); i++) {
        double right =
            i == inOrder.size() - 1
                ? width
                : Math.clamp(
                    (rightmost(inOrder.get(i)) + leftmost(inOrder.get(i + 1))) / 2, left, width);
        rooms.add(new Plan.Room(inOrder.get(i), left, right));
        left = right;
      }
    }
    return rooms;
  }

  private double leftmost(Floor floor) {
    return leftEnds.entrySet().stream()
        .filter(entry -> entry.getKey().room().equals(floor.id()))
        .mapToDouble(entry -> entry.getValue() - entry.getKey().margin())
        .min()
        .orElse(width);
  }

  private double rightmost(Floor floor) {
    return leftEnds.entrySet().stream()
        .filter(entry -> entry.getKey().room().equals(floor.id()))
        .mapToDouble(e -> e.getValue() + e.getKey().width() + e.getKey().margin())
        .max()
        .orElse(width);
  }
}
