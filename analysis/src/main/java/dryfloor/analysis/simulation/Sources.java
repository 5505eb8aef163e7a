package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where the water at an end of a pipe comes from: through junctions to places that have some. */
final class Sources {

  private Sources() {}

  /**
   * Where a pipe has its water from, most likely first: what feeds its first end, from run to run
   * against their direction; then whatever else its first end hangs on; then its second.
   */
  static List<Integer> of(FlowNetwork network, Pipe pipe) {
    Set<Integer> places = new LinkedHashSet<>();
    addFeeding(network, pipe.leg(0).end(), places, new HashSet<>());
    places.addAll(behind(network, pipe, 0));
    places.addAll(behind(network, pipe, 1));
    return List.copyOf(places);
  }

  private static void addFeeding(
      FlowNetwork network, PipeEnd end, Set<Integer> places, Set<Integer> met) {
    if (!end.atJunction()) {
      if (gives(network.places().get(end.place()))) {
        places.add(end.place());
      }
    } else if (met.add(end.junction())) {
      for (Pipe feeding : network.pipes()) {
        if (feeding.leg(1).end().junction() == end.junction()) {
          addFeeding(network, feeding.leg(0).end(), places, met);
        }
      }
    }
  }

  /**
   * The places from which water can reach an end of a pipe without passing the pipe itself, nearest
   * first by the junctions between: the place at the end, or what lies behind its junction.
   */
  static List<Integer> behind(FlowNetwork network, Pipe pipe, int side) {
    List<Integer> places = new ArrayList<>();
    Set<Integer> met = new HashSet<>();
    Deque<PipeEnd> ends = new ArrayDeque<>(List.of(pipe.leg(side).end()));
    while (!ends.isEmpty()) {
      PipeEnd end = ends.removeFirst();
      if (!end.atJunction()) {
        if (gives(network.places().get(end.place())) && !places.contains(end.place())) {
          places.add(end.place());
        }
      } else if (met.add(end.junction())) {
        addBeyond(network, pipe, end.junction(), ends);
      }
    }
    return places;
  }

  private static void addBeyond(
      FlowNetwork network, Pipe without, int junction, Deque<PipeEnd> ends) {
    for (Pipe other : network.pipes()) {
      for (int side = 0; side < 2; side++) {
        if (!other.equals(without) && other.leg(side).end().junction() == junction) {
          ends.addLast(other.leg(1 - side).end());
        }
      }
    }
  }

  private static boolean gives(Place place) {
    return switch (place.kind()) {
      case VESSEL, BASIN, FLOOR, SUPPLY -> true;
      case COLUMN, TEE, DEVICE, DRAIN, BEYOND, OUTSIDE -> false;
    };
  }
}
