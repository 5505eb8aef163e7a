package dryfloor.analysis.plain;

import dryfloor.analysis.outcome.Verdict;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a run of the plain simulator says: sums over all its steps. */
final class PlainAnswer {

  /** Less than this is no water (m³). */
  static final double NOTHING = 1e-6;

  private final Map<String, Double> drained = new TreeMap<>();
  private final Map<String, Double> supplied = new TreeMap<>();

  /** What reached basins and floors from anywhere else. */
  private final Map<String, Double> caught = new TreeMap<>();

  private final House house;
  private final Water water;
  private double beyond;
  private Flows last;

  PlainAnswer(House house, Water water) {
    this.house = house;
    this.water = water;
    this.last = new Flows(house.pipes.size(), house.ways.size(), 0, house.holes().size());
  }

  void count(Flows flows, double seconds) {
    last = flows;
    for (int i = 0; i < house.pipes.size(); i++) {
      Pipe pipe = house.pipes.get(i);
      outside(pipe.from.node(), flows.from[i] * seconds);
      outside(pipe.to.node(), -flows.to[i] * seconds);
      arrive(pipe.to.node(), flows.to[i] * seconds);
      arrive(pipe.from.node(), -flows.from[i] * seconds);
    }
    for (int i = 0; i < house.ways.size(); i++) {
      Way way = house.ways.get(i);
      moved(way.from(), way.to(), flows.way[i] * seconds);
    }
    for (int i = 0; i < flows.filling.length; i++) {
      arrive(water.held.get(i).other(flows.filling[i]), -flows.filling[i] * seconds);
    }
    List<House.Hole> holes = house.holes();
    for (int i = 0; i < holes.size(); i++) {
      arrive(holes.get(i).hole().landing(), flows.hole[i] * seconds);
    }
  }

  /** Water that went a way that is no pipe. */
  private void moved(Place from, Place to, double volume) {
    Place target = volume > 0 ? to : from;
    arrive(target, Math.abs(volume));
    if (target == house.beyond) {
      beyond += Math.abs(volume);
    }
  }

  private void arrive(Node to, double volume) {
    if (volume > 0
        && to instanceof Place place
        && (place.kind == Place.Kind.BASIN || place.kind == Place.Kind.FLOOR)) {
      caught.merge(place.id, volume, Double::sum);
    }
  }

  private void outside(Node node, double taken) {
    if (node instanceof Place place && place.kind == Place.Kind.OUTSIDE) {
      if (taken > 0) {
        supplied.merge(place.id, taken, Double::sum);
      } else {
        drained.merge(place.id, -taken, Double::sum);
      }
    }
  }

  /** What comes in from supplies when all else stands still goes on to the end. */
  void goOn(double seconds) {
    if (comesIn() && seconds > 0) {
      count(last, seconds);
    }
  }

  /** Whether water comes in from outside. */
  boolean comesIn() {
    boolean comesIn = false;
    for (int i = 0; i < house.pipes.size(); i++) {
      comesIn |= isOutside(house.pipes.get(i).from.node()) && last.from[i] > 1e-9;
      comesIn |= isOutside(house.pipes.get(i).to.node()) && last.to[i] < -1e-9;
    }
    return comesIn;
  }

  private static boolean isOutside(Node node) {
    return node instanceof Place place && place.kind == Place.Kind.OUTSIDE;
  }

  double caughtBy(String place) {
    return caught.getOrDefault(place, 0.0);
  }

  /** What went into a drain less what came up out of it (m³). */
  double drained(String drain) {
    return drained.getOrDefault(drain, 0.0) - supplied.getOrDefault(drain, 0.0);
  }

  double supplied(String supply) {
    return supplied.getOrDefault(supply, 0.0);
  }

  double beyond() {
    return beyond;
  }

  /** Water that has come from outside less what has gone there (m³). */
  double fromOutside() {
    return supplied.values().stream().mapToDouble(Double::doubleValue).sum()
        - drained.values().stream().mapToDouble(Double::doubleValue).sum()
        - beyond;
  }

  Verdict verdict() {
    boolean wet =
        house.places.values().stream()
            .anyMatch(p -> p.kind == Place.Kind.FLOOR && caughtBy(p.id) > NOTHING);
    if (wet || beyond > NOTHING) {
      return Verdict.WET;
    }
    boolean basins =
        house.places.values().stream()
            .anyMatch(p -> p.kind == Place.Kind.BASIN && caughtBy(p.id) > NOTHING);
    boolean drains = drained.values().stream().anyMatch(volume -> volume > NOTHING);
    return basins || drains ? Verdict.CAUGHT : Verdict.DRY;
  }
}
