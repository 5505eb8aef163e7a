package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What went over one path, without the stops that water makes inside it. A run is filled from one
 * end and empties itself at another: where only one end gave, all that came out came from there.
 */
final class PathMovements {

  private final String path;
  private final List<Ledger.Entry> entries;

  /** What each place gave to the path's own water (m³), less what it got back. */
  private final Map<String, Double> given = new LinkedHashMap<>();

  private final Map<String, Ledger.Way> ways = new LinkedHashMap<>();

  PathMovements(String path, List<Ledger.Entry> entries) {
    this.path = path;
    this.entries = entries;
  }

  List<Movement> all() {
    List<Movement> all = new ArrayList<>();
    for (Ledger.Entry entry : entries) {
      boolean fills = entry.to().equals(path) && !entry.from().equals(path);
      boolean empties = entry.from().equals(path) && !entry.to().equals(path);
      if (isVessel(entry) || (!fills && !empties)) {
        direct(entry, all);
      } else {
        String place = fills ? entry.from() : entry.to();
        given.merge(place, fills ? entry.volume() : -entry.volume(), Double::sum);
        ways.merge(place, entry.way(), PathMovements::worse);
      }
    }
    through(all);
    return all;
  }

  /** Over a rim, out of a wall or a leak the path is the vessel or floor itself. */
  private static boolean isVessel(Ledger.Entry entry) {
    return switch (entry.way()) {
      case RIM, SILL, THROWN, POURED, TAKEN, BURST, WEIR, HELD_BY_DEVICE -> true;
      case RUN, LEAK, PARTED -> false;
    };
  }

  private static void direct(Ledger.Entry entry, List<Movement> all) {
    boolean withinTheRun = entry.from().equals(entry.path()) && entry.to().equals(entry.path());
    if (!withinTheRun) {
      add(entry.from(), entry.to(), entry.path(), entry.way(), entry.volume(), all);
    }
  }

  private void through(List<Movement> all) {
    List<String> givers = given.keySet().stream().filter(place -> given(place) > 0).toList();
    List<String> takers = given.keySet().stream().filter(place -> given(place) < 0).toList();
    if (givers.size() == 1 && !takers.isEmpty()) {
      takers.forEach(to -> add(givers.getFirst(), to, path, way(to), -given(to), all));
    } else if (takers.size() == 1 && !givers.isEmpty()) {
      givers.forEach(from -> add(from, takers.getFirst(), path, way(from), given(from), all));
    } else {
      givers.forEach(from -> add(from, path, path, way(from), given(from), all));
      takers.forEach(to -> add(path, to, path, way(to), -given(to), all));
    }
  }

  private double given(String place) {
    return given.getOrDefault(place, 0.0);
  }

  private Ledger.Way way(String place) {
    return ways.getOrDefault(place, Ledger.Way.RUN);
  }

  /** What leaves a run where it should not is told as such. */
  private static Ledger.Way worse(Ledger.Way a, Ledger.Way b) {
    return a == Ledger.Way.RUN ? b : a;
  }

  private static void add(
      String from, String to, String path, Ledger.Way way, double volume, List<Movement> all) {
    for (int i = 0; i < all.size(); i++) {
      Movement known = all.get(i);
      if (known.from().equals(from) && known.to().equals(to) && known.way() == way) {
        all.set(i, new Movement(from, to, path, way, known.volume() + volume, 0));
        return;
      }
    }
    all.add(new Movement(from, to, path, way, volume, 0));
  }
}
