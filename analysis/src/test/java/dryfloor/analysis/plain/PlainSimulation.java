package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Water in time: small steps, each taken twice and averaged. */
final class PlainSimulation {

  /** Longest step, and how far a level may move and may be wrong in one (s, m). */
  private static final double LONGEST = 600;

  private static final double SHORTEST = 2e-3;
  private static final double MOVES = 1e-3;
  private static final double WRONG = 1e-5;

  /** As near to a switch it may move so far that the switch acts in the right second (m). */
  private static final double AT_A_SWITCH = 1e-6;

  /** A level slower than this stands still: a tenth of a millimetre an hour (m/s). */
  private static final double STILL = 1e-4 / 3600;

  /** Nor does anything move slower than this, a tenth of a litre a day (m³/s). */
  private static final double LEAST_FLOW = 1e-9;

  /** Share of the time away in which a swing must show. */
  private static final double SWINGS_IN = 0.05;

  private static final double STILL_FOR = 120;
  private static final double WINDOW = 60;

  final House house;
  final PlainAnswer answer;
  private final Water water;
  private final Moment moment;
  private final List<Mark> marks = new ArrayList<>();
  private final Map<String, Swing> swings = new TreeMap<>();
  private final double away;
  private final Patience patience;
  double time;
  private double step = SHORTEST;
  private double stillSince;
  private double pouredIn;
  private double imbalance;
  private double waterAtFirst;
  private double windowStart;
  private double[] window = new double[0];
  private boolean atRest;
  private int steps;

  private PlainSimulation(House house, Patience patience) {
    this.house = house;
    this.patience = patience;
    double longer =
        house.effects(Effect.AwayTimes.class).stream()
            .mapToDouble(Effect.AwayTimes::factor)
            .reduce(1, (a, b) -> a * b);
    this.away = house.drawing.conditions().away() * longer;
    this.water = new Water(house);
    this.moment = new Moment(house, water);
    this.answer = new PlainAnswer(house, water);
    addMarks();
  }

  /** Normal operation from the declared levels until it settles. */
  static PlainSimulation normal(Installation drawing, Patience patience) {
    PlainSimulation simulation = new PlainSimulation(new House(drawing, List.of()), patience);
    new Start(simulation.house, simulation.water).begin();
    simulation.run();
    return simulation;
  }

  /** A failure, from where normal operation has settled. */
  static PlainSimulation failure(PlainSimulation normal, List<Effect> effects, Patience patience) {
    PlainSimulation simulation =
        new PlainSimulation(new House(normal.house.drawing, effects), patience);
    new Start(simulation.house, simulation.water).goOnFrom(normal.house, normal.water);
    simulation.run();
    return simulation;
  }

  // Time.

  private void run() {
    long started = Patience.clock();
    waterAtFirst = water.sum();
    changeModes();
    window = water.state();
    while (time < away - 1e-9 && !atRest && !patience.isAtItsEnd(steps, started)) {
      oneStep();
      steps++;
    }
    imbalance = water.sum() - waterAtFirst - pouredIn - answer.fromOutside();
    if (atRest) {
      answer.goOn(away - time);
    }
  }

  int steps() {
    return steps;
  }

  boolean isOver() {
    return atRest || time >= away - 1e-6;
  }

  private void oneStep() {
    double next = Math.min(house.switching.nextMoment(time), away);
    double seconds = Math.min(step, next - time);
    double[] start = water.state();
    moment.suckingAir.clear();
    Flows first = moment.flows(seconds);
    water.move(first, seconds);
    double[] once = water.state();
    Flows second = moment.flows(seconds);
    water.restore(start);
    Flows both = Flows.middle(first, second);
    water.move(both, seconds);
    double wrong = 0;
    double moved = 0;
    boolean overshoots = false;
    int i = 0;
    for (Place place : house.places.values()) {
      if (place.kind != Place.Kind.OUTSIDE) {
        double area = place.area();
        wrong = Math.max(wrong, Math.abs(place.volume - once[i]) / area / WRONG);
        moved = Math.max(moved, Math.abs(place.volume - start[i]) / area / mayMove(place));
        overshoots |= overshoots(start[i], once[i], place.volume);
      }
      i++;
    }
    double excess = Math.max(wrong, moved);
    boolean losesPrime = !moment.suckingAir.isEmpty();
    if ((excess > 1.5 || losesPrime) && seconds > SHORTEST) {
      water.restore(start);
      step = Math.max(SHORTEST, seconds / 2);
      return;
    }
    water.restore(start);
    water.move(both, seconds);
    answer.count(both, seconds);
    time += seconds;
    moment.suckingAir.forEach(pump -> pump.lostPrime = true);
    watchStillness();
    watchSwings();
    pour(time - seconds, time);
    if (changeModes()) {
      step = 0.05;
      stillSince = time;
    } else {
      step =
          Math.clamp(
              seconds * (overshoots || excess > 1 ? 0.7 : excess < 0.5 ? 1.3 : 1),
              SHORTEST,
              LONGEST);
    }
    atRest = time - stillSince > STILL_FOR && Double.isInfinite(house.switching.nextMoment(time));
  }

  /**
   * How far its level may move in a step (m): little where something is about to happen, because
   * what a pump that comes and goes all day moves too much each time adds up.
   */
  private double mayMove(Place place) {
    double level = place.level();
    double most = MOVES;
    for (Mark mark : marks) {
      double away = Math.abs(level - mark.elevation());
      if (mark.place() == place && away < 2 * MOVES) {
        most = Math.min(most, Math.clamp(away / 2, mark.least(), MOVES / 20));
      }
    }
    return most;
  }

  /**
   * A level at which a hole is bared or a switch acts.
   *
   * @param least that the level may always move near it (m)
   */
  private record Mark(Node place, double elevation, double least) {}

  private void addMarks() {
    for (Pipe pipe : house.pipes) {
      pipe.holes.forEach(
          hole -> marks.add(new Mark(hole.coveredBy(), hole.elevation(), MOVES / 20)));
    }
    for (Control control : house.drawing.controls()) {
      switch (control) {
        case Control.LevelSwitch level -> {
          marks.add(new Mark(house.place(level.vessel()), level.lower(), AT_A_SWITCH));
          marks.add(new Mark(house.place(level.vessel()), level.upper(), AT_A_SWITCH));
        }
        case Control.LeakSensor sensor -> {
          Place place = house.place(sensor.in());
          marks.add(new Mark(place, place.bottom + sensor.depth(), AT_A_SWITCH));
        }
        case Control.Timer timer -> {}
        case Control.HandSwitch hand -> {}
      }
    }
  }

  /** Whether the step is so long that the second try takes back most of the first. */
  private static boolean overshoots(double start, double once, double middle) {
    double first = once - start;
    double second = 2 * (middle - start) - first;
    return Math.abs(first) > 1e-7 && Math.abs(second - first) > 0.8 * Math.abs(first);
  }

  /** Looks back over a minute or more, so that small noise of single steps does not count. */
  private void watchStillness() {
    double seconds = time - windowStart;
    if (seconds < WINDOW) {
      return;
    }
    double[] now = water.state();
    int i = 0;
    boolean still = true;
    for (Place place : house.places.values()) {
      double moved = Math.abs(now[i] - window[i]);
      still &= moved < seconds * Math.min(STILL * place.area(), LEAST_FLOW);
      i++;
    }
    for (; i < now.length; i++) {
      still &= Math.abs(now[i] - window[i]) < LEAST_FLOW * seconds;
    }
    stillSince = still ? stillSince : time;
    window = now;
    windowStart = time;
  }

  private void watchSwings() {
    double left = (away - time) / away;
    if (left < 2 * SWINGS_IN) {
      house.places.forEach(
          (id, place) ->
              swings.computeIfAbsent(id, any -> new Swing()).pass(place.level(), left < SWINGS_IN));
    }
  }

  /** The final level of a place; where it swings, the one of its swing nearest to another (m). */
  double levelNearest(String place, double other) {
    double level = house.place(place).level();
    return atRest ? level : swings.getOrDefault(place, new Swing()).nearest(other, level);
  }

  private void pour(double before, double after) {
    for (Effect.Poured poured : house.effects(Effect.Poured.class)) {
      if (poured.time() > before && poured.time() <= after + 1e-9) {
        house.place(poured.vessel()).volume += poured.volume();
        pouredIn += poured.volume();
        stillSince = after;
      }
    }
  }

  private boolean changeModes() {
    boolean any = false;
    boolean again = true;
    for (int i = 0; i < 10 && again; i++) {
      again = house.switching.update(time);
      moment.balanceTees(1);
      for (Pipe pipe : house.pipes) {
        pipe.evaluate(SHORTEST);
        again |= i < 5 && pipe.changesMode();
      }
      any |= again;
    }
    return any;
  }

  /** Water that was made or lost (m³): rounding, if all is well. */
  double imbalance() {
    return imbalance;
  }
}
