package dryfloor.analysis.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The flows of one moment, such that a step of so many seconds makes sense. */
final class Moment {

  private final House house;
  private final Water water;

  /** Pumps that did not get what they asked for, and that no water starts again. */
  final List<Fixture.Pump> suckingAir = new ArrayList<>();

  Moment(House house, Water water) {
    this.house = house;
    this.water = water;
  }

  /** Solved anew whenever a place can't give what was asked of it. */
  Flows flows(double seconds) {
    house.pipes.forEach(Pipe::unlimited);
    double[] wayLimits = new double[house.ways.size()];
    Arrays.fill(wayLimits, Double.POSITIVE_INFINITY);
    Flows flows = solved(seconds, wayLimits);
    for (int i = 0; i < 20 && limitToWhatIsThere(flows, wayLimits, seconds); i++) {
      flows = solved(seconds, wayLimits);
    }
    return flows;
  }

  private Flows solved(double seconds, double[] wayLimits) {
    balanceTees(seconds);
    List<House.Hole> holes = house.holes();
    Flows flows = new Flows(house.pipes.size(), house.ways.size(), water.held.size(), holes.size());
    for (int i = 0; i < house.pipes.size(); i++) {
      Pipe pipe = house.pipes.get(i);
      if (!(pipe.from.node() instanceof Tee) && !(pipe.to.node() instanceof Tee)) {
        pipe.evaluate(seconds);
        levelOut(pipe, seconds);
      }
      flows.from[i] = pipe.flowFrom;
      flows.over[i] = pipe.over;
      flows.to[i] = pipe.flowTo;
    }
    for (int i = 0; i < house.ways.size(); i++) {
      flows.way[i] = wayFlow(house.ways.get(i), wayLimits[i], seconds);
    }
    for (int i = 0; i < water.held.size(); i++) {
      flows.filling[i] = water.held.get(i).filling(seconds);
    }
    for (int i = 0; i < holes.size(); i++) {
      flows.hole[i] = holes.get(i).tee().through(holes.get(i).hole());
    }
    keepPoolsLevel(flows, wayLimits, seconds);
    return flows;
  }

  /** One after the other, those that hang together then by as much, until none moves any more. */
  void balanceTees(double seconds) {
    boolean again = !house.tees.isEmpty();
    for (int i = 0; i < 60 && again; i++) {
      double moved = 0;
      house.joinedTees.forEach(joined -> Together.balance(joined, seconds));
      for (Tee tee : house.tees.values()) {
        double before = tee.level();
        tee.balance(seconds);
        moved = Math.max(moved, Math.abs(tee.level() - before));
      }
      again = house.tees.size() > 1 && moved > 1e-9;
    }
    shareOutAtTees();
  }

  /** What one tee no longer takes the one before must not give, nor the one before that. */
  private void shareOutAtTees() {
    double tooMuch = 1;
    for (int i = 0; i < 200 && tooMuch > 1e-13; i++) {
      tooMuch = house.tees.values().stream().mapToDouble(Tee::shareOut).sum();
    }
  }

  /**
   * Over a drowned edge so much passes that both sides stand level after the step. By the law of
   * the weir it would be the same, but in steps of milliseconds.
   */
  private void keepPoolsLevel(Flows flows, double[] wayLimits, double seconds) {
    List<Integer> within = new ArrayList<>();
    for (int i = 0; i < house.ways.size(); i++) {
      if (house.ways.get(i).isWithinAPool()) {
        within.add(i);
      }
    }
    if (within.isEmpty()) {
      return;
    }
    double[] start = water.state();
    water.move(flows, seconds);
    for (int sweep = 0; sweep < 10; sweep++) {
      for (int i : within) {
        Way way = house.ways.get(i);
        double most = Math.min(wayLimits[i], way.mostWithinAPool());
        double missing =
            (way.from().level() - way.to().level())
                / (1 / way.from().area() + 1 / way.to().area())
                / seconds;
        double flow = Math.clamp(flows.way[i] + missing, -most, most);
        Water.take(way.from(), (flow - flows.way[i]) * seconds);
        Water.take(way.to(), -(flow - flows.way[i]) * seconds);
        flows.way[i] = flow;
      }
    }
    water.restore(start);
  }

  private static double wayFlow(Way way, double limit, double seconds) {
    double flow = way.flow();
    boolean free = way.kind() == Way.Kind.THROWN || way.kind() == Way.Kind.LOST;
    double level = levelling(way.from(), way.to(), way.from().level(), way.to().level(), seconds);
    double most = Math.min(limit, free ? Math.abs(flow) : level);
    return Math.clamp(flow, -most, most);
  }

  /** The flow that would bring two levels together in one step (m³/s). */
  private static double levelling(Place a, Place b, double levelA, double levelB, double seconds) {
    return Math.abs(levelA - levelB) / (1 / a.area() + 1 / b.area()) / seconds;
  }

  private static void levelOut(Pipe pipe, double seconds) {
    if (pipe.from.node() instanceof Place a
        && pipe.to.node() instanceof Place b
        && !pipe.whole.pumps()
        && a != b
        && a.kind != Place.Kind.OUTSIDE
        && b.kind != Place.Kind.OUTSIDE
        && Math.abs(pipe.over) > 0) {
      double most = levelling(a, b, pipe.from.head(), pipe.to.head(), seconds);
      if (Math.abs(pipe.over) > most) {
        pipe.cutTo(most / Math.abs(pipe.over));
      }
    }
  }

  /**
   * Nothing takes more from a place than stands above its opening and what arrives. The higher
   * opening takes first; those at one height go short alike.
   */
  private boolean limitToWhatIsThere(Flows flows, double[] wayLimits, double seconds) {
    boolean cut = false;
    for (Place place : house.places.values()) {
      if (place.kind == Place.Kind.OUTSIDE) {
        continue;
      }
      double arriving = 0;
      List<Taking> takings = new ArrayList<>();
      for (int i = 0; i < house.pipes.size(); i++) {
        Pipe pipe = house.pipes.get(i);
        if (pipe.from.node() == place) {
          arriving += Math.max(0, -flows.from[i]);
          if (flows.from[i] > 0) {
            takings.add(new Taking(i, false, true, pipe.from.elevation()));
          }
        }
        if (pipe.to.node() == place) {
          arriving += Math.max(0, flows.to[i]);
          if (flows.to[i] < 0) {
            takings.add(new Taking(i, false, false, pipe.to.elevation()));
          }
        }
      }
      for (int i = 0; i < house.ways.size(); i++) {
        Way way = house.ways.get(i);
        arriving += way.to() == place ? Math.max(0, flows.way[i]) : 0;
        arriving += way.from() == place ? Math.max(0, -flows.way[i]) : 0;
        if ((way.from() == place && flows.way[i] > 0) || (way.to() == place && flows.way[i] < 0)) {
          takings.add(new Taking(i, true, true, way.intake()));
        }
      }
      takings.sort((a, b) -> Double.compare(b.elevation(), a.elevation()));
      double there = place.volume + arriving * seconds;
      for (int i = 0; i < takings.size(); ) {
        double elevation = takings.get(i).elevation();
        List<Taking> alike = takings.stream().filter(t -> t.elevation() == elevation).toList();
        double wanted = alike.stream().mapToDouble(t -> t.wanted(flows)).sum() * seconds;
        double above = Math.max(0, there - place.volumeAt(elevation));
        if (wanted > above * (1 + 1e-12)) {
          cut = true;
          alike.forEach(t -> t.limit(above / wanted * t.wanted(flows), wayLimits, house.pipes));
          alike.forEach(t -> suckAir(t, above / wanted));
        }
        there -= Math.min(wanted, above);
        i += alike.size();
      }
    }
    return cut;
  }

  private void suckAir(Taking taking, double share) {
    if (!taking.isWay() && share < 0.999) {
      for (Fixture fixture : house.pipes.get(taking.index()).whole.fixtures) {
        if (fixture instanceof Fixture.Pump pump && pump.lifts() && !pump.primesAgain) {
          suckingAir.add(pump);
        }
      }
    }
  }

  /** One thing that takes water from a place. */
  private record Taking(int index, boolean isWay, boolean atFirst, double elevation) {

    double wanted(Flows flows) {
      return Math.abs(isWay ? flows.way[index] : atFirst ? flows.from[index] : flows.to[index]);
    }

    void limit(double most, double[] wayLimits, List<Pipe> pipes) {
      if (isWay) {
        wayLimits[index] = most;
      } else if (atFirst) {
        pipes.get(index).mostFromFirst = most;
      } else {
        pipes.get(index).mostFromSecond = most;
      }
    }
  }
}
