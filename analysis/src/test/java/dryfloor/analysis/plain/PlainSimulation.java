package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Water in time: small steps, each taken twice and averaged. */
final class PlainSimulation {

  /** Longest step, and how far a level may move and may be wrong in one (s, m). */
  private static final double LONGEST = 60;

  private static final double SHORTEST = 2e-3;
  private static final double MOVES = 1e-3;
  private static final double WRONG = 1e-5;

  /** A level slower than this stands still: a tenth of a millimetre an hour (m/s). */
  private static final double STILL = 1e-4 / 3600;

  /** Nor does anything move slower than this, a litre a day (m³/s). */
  private static final double LEAST_FLOW = 1e-8;

  private static final double STILL_FOR = 120;
  private static final double WINDOW = 60;

  final House house;
  final PlainAnswer answer;
  private final List<Held> held = new ArrayList<>();
  private final double away;
  private final int mostSteps;
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

  private PlainSimulation(House house, int mostSteps) {
    this.house = house;
    this.mostSteps = mostSteps;
    double longer =
        house.effects(Effect.AwayTimes.class).stream()
            .mapToDouble(Effect.AwayTimes::factor)
            .reduce(1, (a, b) -> a * b);
    this.away = house.drawing.conditions().away() * longer;
    for (Run run : house.drawing.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.Device device && device.holds() > 0) {
          house.pipes.stream()
              .filter(pipe -> pipe.run.equals(run.id()))
              .findFirst()
              .ifPresent(pipe -> held.add(new Held(pipe, device.holds())));
        }
      }
    }
    this.answer = new PlainAnswer(house);
  }

  /** Normal operation from the declared levels until it settles. */
  static PlainSimulation normal(Installation drawing, int mostSteps) {
    PlainSimulation simulation = new PlainSimulation(new House(drawing, List.of()), mostSteps);
    simulation.begin();
    simulation.run();
    return simulation;
  }

  /** A failure, from where normal operation has settled. */
  static PlainSimulation failure(PlainSimulation normal, List<Effect> effects, int mostSteps) {
    PlainSimulation simulation =
        new PlainSimulation(new House(normal.house.drawing, effects), mostSteps);
    simulation.goOnFrom(normal);
    simulation.run();
    return simulation;
  }

  // The start.

  private void begin() {
    house.switching.update(0);
    for (Pipe pipe : house.pipes) {
      boolean covered = pipe.from.level() > pipe.crest && pipe.to.level() > pipe.crest;
      boolean drowned = pipe.from.level() > pipe.crest + pipe.bore;
      pipe.full = covered || isFedAtTee(pipe) || (!pipe.vented && (drowned || pipe.whole.pumps()));
    }
    for (int i = 0; i < 5; i++) {
      house.tees.values().forEach(tee -> tee.balance(1));
      house.pipes.forEach(Pipe::standStill);
    }
    for (Held device : held) {
      device.inside = device.pipe.whole.pumps() ? device.capacity : 0;
    }
  }

  /** Whether a pump feeds the tee where it begins. */
  private static boolean isFedAtTee(Pipe pipe) {
    return pipe.from.node() instanceof Tee tee
        && !pipe.vented
        && tee.pipes.stream().anyMatch(other -> other.to.node() == tee && other.whole.pumps());
  }

  private void goOnFrom(PlainSimulation normal) {
    house.places.forEach((id, place) -> place.volume = normal.house.place(id).volume);
    house.switching.goOnFrom(normal.house.switching);
    house.fixtures.forEach(
        (id, fixture) ->
            Optional.ofNullable(normal.house.fixtures.get(id))
                .ifPresent(before -> goOn(fixture, before)));
    for (Pipe pipe : house.pipes) {
      Pipe before = normal.pipe(pipe.run);
      pipe.full = before.full;
      if (pipe.legA.volume() + pipe.legB.volume() > 0 && isWhole(pipe)) {
        pipe.inA = Math.min(before.inA, pipe.legA.volume());
        pipe.inB = Math.min(before.inB, pipe.legB.volume());
      } else {
        pipe.standStill();
      }
    }
    for (int i = 0; i < held.size(); i++) {
      held.get(i).inside = normal.held.get(i).inside;
    }
  }

  private static void goOn(Fixture fixture, Fixture before) {
    if (fixture instanceof Fixture.Valve valve && before instanceof Fixture.Valve was) {
      valve.opening = was.opening;
    }
  }

  private boolean isWhole(Pipe pipe) {
    return house.pipes.stream().filter(other -> other.run.equals(pipe.run)).count() == 1;
  }

  private Pipe pipe(String run) {
    return house.pipes.stream().filter(pipe -> pipe.run.equals(run)).findFirst().orElseThrow();
  }

  // Time.

  private void run() {
    waterAtFirst = water();
    changeModes();
    window = state();
    while (time < away - 1e-9 && !atRest && steps < mostSteps) {
      oneStep();
      steps++;
    }
    imbalance = water() - waterAtFirst - pouredIn - answer.fromOutside();
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
    double[] start = state();
    Flows first = flows(seconds);
    apply(first, seconds, false);
    double[] once = state();
    Flows second = flows(seconds);
    restore(start);
    Flows both = Flows.middle(first, second);
    apply(both, seconds, false);
    double wrong = 0;
    double moved = 0;
    boolean overshoots = false;
    int i = 0;
    for (Place place : house.places.values()) {
      if (place.kind != Place.Kind.OUTSIDE) {
        double area = place.area();
        wrong = Math.max(wrong, Math.abs(place.volume - once[i]) / area / WRONG);
        moved = Math.max(moved, Math.abs(place.volume - start[i]) / area / MOVES);
        overshoots |= overshoots(start[i], once[i], place.volume);
      }
      i++;
    }
    double excess = Math.max(wrong, moved);
    if (excess > 1.5 && seconds > SHORTEST) {
      restore(start);
      step = Math.max(SHORTEST, seconds / 2);
      return;
    }
    restore(start);
    apply(both, seconds, true);
    time += seconds;
    watchStillness();
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
    double[] now = state();
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
      house.tees.values().forEach(tee -> tee.balance(1));
      for (Pipe pipe : house.pipes) {
        pipe.evaluate(SHORTEST);
        again |= i < 5 && pipe.changesMode();
      }
      any |= again;
    }
    return any;
  }

  // Flows.

  /** Solved anew whenever a place can't give what was asked of it. */
  private Flows flows(double seconds) {
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
    for (int i = 0; i < (house.tees.size() > 1 ? 8 : 1); i++) {
      house.tees.values().forEach(tee -> tee.balance(seconds));
    }
    List<House.Hole> holes = house.holes();
    Flows flows = new Flows(house.pipes.size(), house.ways.size(), held.size(), holes.size());
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
    for (int i = 0; i < held.size(); i++) {
      flows.filling[i] = held.get(i).filling(seconds);
    }
    for (int i = 0; i < holes.size(); i++) {
      flows.hole[i] = holes.get(i).hole().flow(holes.get(i).tee().level());
    }
    return flows;
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

  /** Nothing takes more from a place than stands above its opening and what arrives. */
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
      for (Taking taking : takings) {
        double wanted = taking.wanted(flows) * seconds;
        double above = Math.max(0, there - place.volumeAt(taking.elevation()));
        if (wanted > above * (1 + 1e-12)) {
          cut = true;
          taking.limit(above / seconds, wayLimits, house.pipes);
          losePrime(taking, above / wanted);
        }
        there -= Math.min(wanted, above);
      }
    }
    return cut;
  }

  private void losePrime(Taking taking, double share) {
    if (!taking.isWay() && share < 0.999) {
      for (Fixture fixture : house.pipes.get(taking.index()).whole.fixtures) {
        if (fixture instanceof Fixture.Pump pump && pump.lifts()) {
          pump.lostPrime |= !pump.primesAgain;
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

  private void apply(Flows flows, double seconds, boolean forGood) {
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
      take(
          flows.filling[i] > 0 ? device.pipe.to.node() : device.pipe.from.node(),
          flows.filling[i] * seconds);
    }
    List<House.Hole> holes = house.holes();
    for (int i = 0; i < holes.size(); i++) {
      take(holes.get(i).hole().landing(), -flows.hole[i] * seconds);
    }
    if (forGood) {
      answer.count(flows, seconds);
    }
  }

  private static void take(Node node, double volume) {
    if (node instanceof Place place && place.kind != Place.Kind.OUTSIDE) {
      place.volume -= volume;
    }
  }

  // State.

  private double[] state() {
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

  private void restore(double[] state) {
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

  /** Water that was made or lost (m³): rounding, if all is well. */
  double imbalance() {
    return imbalance;
  }

  /** All the water inside (m³), to see that none is made. */
  private double water() {
    return house.places.values().stream().mapToDouble(place -> place.volume).sum()
        + house.pipes.stream().mapToDouble(Pipe::holds).sum()
        + held.stream().mapToDouble(device -> device.inside).sum();
  }

  Map<String, Double> levels() {
    Map<String, Double> levels = new TreeMap<>();
    house.places.values().stream()
        .filter(place -> place.kind != Place.Kind.OUTSIDE)
        .forEach(place -> levels.put(place.id, place.level()));
    return levels;
  }
}
