package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All the water of a house: in its places, in its pipes and in devices that hold some. */
final class Water {

  private final House house;
  final List<Held> held = new ArrayList<>();

  Water(House house) {
    this.house = house;
    for (Run run : house.drawing.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.Device device && device.holds() > 0) {
          held.add(held(run, device));
        }
      }
    }
  }

  private Held held(Run run, Part.Device device) {
    List<Pipe> pieces = house.pipes.stream().filter(pipe -> pipe.run.equals(run.id())).toList();
    Pipe around = pieces.stream().filter(pipe -> pipe.has(device.id())).findFirst().orElseThrow();
    boolean hasComeApart =
        house.effects(Effect.RunParted.class).stream().anyMatch(e -> e.run().equals(run.id()));
    List<Pipe> joined = hasComeApart ? List.of(around) : pieces;
    Optional<Fixture.Pump> pump =
        joined.stream()
            .flatMap(pipe -> pipe.whole.fixtures.stream())
            .filter(Fixture.Pump.class::isInstance)
            .map(Fixture.Pump.class::cast)
            .findFirst();
    return new Held(around, device.holds(), joined.getFirst().from.node(), pump);
  }

  /** Lets flows go on for some seconds. */
  void move(Flows flows, double seconds) {
    for (int i = 0; i < house.pipes.size(); i++) {
      Pipe pipe = house.pipes.get(i);
      pipe.inA += (flows.from[i] - flows.over[i]) * seconds;
      pipe.inB += (flows.over[i] - flows.to[i]) * seconds;
      take(pipe.from.node(), flows.from[i] * seconds);
      take(pipe.to.node(), -flows.to[i] * seconds);
    }
    for (int i = 0; i < house.ways.size(); i++) {
      Way way = house.ways.get(i);
      take(way.from(), flows.way[i] * seconds);
      take(way.to(), -flows.way[i] * seconds);
    }
    for (int i = 0; i < held.size(); i++) {
      Held device = held.get(i);
      device.inside += flows.filling[i] * seconds;
      take(device.other(flows.filling[i]), flows.filling[i] * seconds);
    }
    List<House.Hole> holes = house.holes();
    for (int i = 0; i < holes.size(); i++) {
      take(holes.get(i).hole().landing(), -flows.hole[i] * seconds);
    }
  }

  static void take(Node node, double volume) {
    if (node instanceof Place place && place.kind != Place.Kind.OUTSIDE) {
      place.volume -= volume;
    }
  }

  double[] state() {
    List<Double> state = new ArrayList<>();
    house.places.values().forEach(place -> state.add(place.volume));
    house.pipes.forEach(
        pipe -> {
          state.add(pipe.inA);
          state.add(pipe.inB);
        });
    held.forEach(device -> state.add(device.inside));
    return state.stream().mapToDouble(Double::doubleValue).toArray();
  }

  void restore(double[] state) {
    int i = 0;
    for (Place place : house.places.values()) {
      place.volume = state[i++];
    }
    for (Pipe pipe : house.pipes) {
      pipe.inA = state[i++];
      pipe.inB = state[i++];
    }
    for (Held device : held) {
      device.inside = state[i++];
    }
  }

  /** All the water inside (m³), to see that none is made. */
  double sum() {
    return house.places.values().stream().mapToDouble(place -> place.volume).sum()
        + house.pipes.stream().mapToDouble(Pipe::holds).sum()
        + held.stream().mapToDouble(device -> device.inside).sum();
  }
}
