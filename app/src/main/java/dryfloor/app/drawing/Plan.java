package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Storey;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where everything is in the elevation, in metres, whatever the water does.
 *
 * @param installation that is drawn
 * @param width of the building as drawn
 * @param storeys from the top down
 * @param rooms floors with their ends
 * @param tanks vessels by id, the outer ones before those that stand in them
 * @param pipes runs
 * @param ends junctions, supplies, drains and openings in floors, by id
 */
public record Plan(
    Installation installation,
    double width,
    List<Storey> storeys,
    List<Room> rooms,
    Map<String, Tank> tanks,
    List<Pipe> pipes,
    Map<String, Point> ends) {

  /** Thickness of the lowest floor, which nothing else gives (m). */
  static final double LOWEST_SLAB = 0.15;

  public Plan {
    storeys = List.copyOf(storeys);
    rooms = List.copyOf(rooms);
    pipes = List.copyOf(pipes);
  }

  /** A room's floor and how far it reaches in the elevation (m). */
  record Room(Floor floor, double left, double right) {}

  /** The plan of an installation. */
  public static Plan of(Installation installation) {
    return of(installation, 1);
  }

  /** The same with so many times as much room for pipes and labels beside the vessels. */
  static Plan of(Installation installation, double room) {
    return new Planner(installation, Stations.PIPE_SPACING * room).plan();
  }

  /** The highest elevation drawn (m). */
  double top() {
    return storeys.stream()
        .mapToDouble(storey -> storey.elevation() + storey.height())
        .max()
        .orElse(0);
  }

  /** The lowest elevation drawn (m), slab included. */
  double bottom() {
    double lowest = storeys.stream().mapToDouble(Storey::elevation).min().orElse(0);
    double deepest = ends.values().stream().mapToDouble(Point::y).min().orElse(lowest);
    return Math.min(lowest, deepest) - LOWEST_SLAB;
  }

  /** Elevation of the underside of a storey's floor (m): the ceiling below, or a slab's depth. */
  double underside(Storey storey) {
    return storeys.stream()
        .filter(below -> below.elevation() < storey.elevation())
        .max(Comparator.comparingDouble(Storey::elevation))
        .map(below -> Math.min(below.elevation() + below.height(), storey.elevation() - 0.05))
        .orElse(storey.elevation() - LOWEST_SLAB);
  }

  /**
   * Where something lies (m): its middle, for a floor beside that. Nothing for what is not drawn,
   * as a circuit.
   */
  Optional<Point> place(String id) {
    return Stream.of(
            Optional.ofNullable(tanks.get(id))
                .map(tank -> new Point(tank.middle(), (tank.rim() + tank.bottom()) / 2)),
            room(id).map(r -> new Point((3 * r.left() + r.right()) / 4, r.floor().elevation())),
            pipe(id).map(Pipe::middle),
            fixture(id).map(Pipe.Fixture::at),
            Optional.ofNullable(ends.get(id)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Pipe.Fixture> fixture(String part) {
    return pipes.stream()
        .flatMap(pipe -> pipe.fittings().stream())
        .filter(fixture -> fixture.id().equals(part))
        .findFirst();
  }

  Optional<Room> room(String floor) {
    return rooms.stream().filter(room -> room.floor().id().equals(floor)).findFirst();
  }

  Optional<Pipe> pipe(String run) {
    return pipes.stream().filter(pipe -> pipe.run().equals(run)).findFirst();
  }
}
