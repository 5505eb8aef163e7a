package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes pipes of runs: whole, in two where they have come apart, and with a tee at a leak. */
final class Plumbing {

  /** Where the run names neither entrance nor exit. */
  private static final double SHARP_ENTRANCE = 0.5;

  private static final double EXIT = 1;

  /** Area of a hole over area of the bore from which on air surely comes in by it. */
  private static final double BREAKS_A_SIPHON = 0.12 * 0.12;

  private final House house;

  Plumbing(House house) {
    this.house = house;
  }

  void addPipes() {
    for (Run run : house.drawing.runs()) {
      addRun(run);
    }
    for (Pipe pipe : house.pipes) {
      for (Pipe.End end : List.of(pipe.from, pipe.to)) {
        if (end.node() instanceof Tee tee && !tee.pipes.contains(pipe)) {
          tee.pipes.add(pipe);
        }
      }
    }
  }

  private void addRun(Run run) {
    Optional<Effect.RunParted> parted =
        house.effects(Effect.RunParted.class).stream()
            .filter(e -> e.run().equals(run.id()))
            .findFirst();
    Optional<Effect.RunLeaks> leaks =
        house.effects(Effect.RunLeaks.class).stream()
            .filter(e -> e.run().equals(run.id()))
            .findFirst();
    Pipe.End from = end(run, run.from(), Failure.End.FIRST);
    Pipe.End to = end(run, run.to(), Failure.End.SECOND);
    List<Profile.Point> points = new ArrayList<>();
    points.add(new Profile.Point(0, from.elevation()));
    run.waypoints().forEach(w -> points.add(new Profile.Point(w.along(), w.elevation())));
    points.add(new Profile.Point(run.length(), to.elevation()));
    List<Fixture> fixtures = fixtures(run);
    if (parted.isPresent()) {
      Effect.RunParted at = parted.get();
      Pipe.End open = new Pipe.End(house.place(at.landing()), at.elevation(), true);
      List<Fixture> before = before(run, fixtures, at.along(), at.partsBefore());
      List<Profile.Point> all = with(points, at.along(), at.elevation());
      add(run, from, open, all, 0, at.along(), before, false);
      add(run, open, to, all, at.along(), run.length(), without(fixtures, before), false);
    } else if (leaks.isPresent()) {
      Effect.RunLeaks at = leaks.get();
      Tee tee = new Tee(run.id() + " leak", at.elevation());
      boolean letsAirIn = at.area() >= BREAKS_A_SIPHON * run.boreArea() * (1 - 1e-9);
      tee.holes.add(
          new Tee.TeeHole(at.area(), at.elevation(), letsAirIn, house.place(at.landing())));
      house.tees.put(tee.id, tee);
      Pipe.End open = new Pipe.End(tee, at.elevation());
      List<Fixture> before = before(run, fixtures, at.along(), at.partsBefore());
      List<Profile.Point> all = with(points, at.along(), at.elevation());
      List<Fixture> beyond = without(fixtures, before);
      add(run, from, open, all, 0, at.along(), before, false);
      add(run, open, to, all, at.along(), run.length(), beyond, at.blockedBeyond());
    } else {
      add(run, from, to, points, 0, run.length(), fixtures, false);
    }
  }

  /** What sits before a place where a run gives way; just there, it stays with the second piece. */
  private static List<Fixture> before(
      Run run, List<Fixture> fixtures, double along, OptionalInt partsBefore) {
    if (partsBefore.isEmpty()) {
      return fixtures.stream().filter(fixture -> fixture.along < along).toList();
    }
    List<String> beyond =
        run.parts().stream()
            .sorted(Comparator.comparingDouble(Part::along))
            .skip(partsBefore.getAsInt())
            .map(Part::id)
            .toList();
    return fixtures.stream().filter(fixture -> !beyond.contains(fixture.id)).toList();
  }

  private static List<Fixture> without(List<Fixture> fixtures, List<Fixture> those) {
    return fixtures.stream().filter(fixture -> !those.contains(fixture)).toList();
  }

  private static List<Profile.Point> with(
      List<Profile.Point> points, double along, double elevation) {
    List<Profile.Point> all = new ArrayList<>(points);
    all.removeIf(point -> point.along() == along);
    all.add(new Profile.Point(along, elevation));
    all.sort(Comparator.comparingDouble(Profile.Point::along));
    return all;
  }

  private Pipe.End end(Run run, RunEnd drawn, Failure.End which) {
    for (Effect.EndMoved moved : house.effects(Effect.EndMoved.class)) {
      if (moved.run().equals(run.id()) && moved.end() == which) {
        return new Pipe.End(house.place(moved.landing()), moved.elevation(), true);
      }
    }
    return switch (drawn) {
      case RunEnd.Opening opening ->
          new Pipe.End(house.opensInto(opening.at()), opening.elevation());
      case RunEnd.AtJunction junction -> {
        Tee tee = house.tees.get(junction.at());
        if (tee == null) {
          throw new IllegalArgumentException(junction.at());
        }
        yield new Pipe.End(tee, tee.elevation);
      }
      case RunEnd.AtSupply supply ->
          new Pipe.End(house.place(supply.at()), supply(supply.at()).elevation());
      case RunEnd.AtDrain drain ->
          new Pipe.End(house.place(drain.at()), drain(drain.at()).elevation());
    };
  }

  private Supply supply(String id) {
    return house.drawing.supplies().stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Drain drain(String id) {
    return house.drawing.drains().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
  }

  private void add(
      Run run,
      Pipe.End from,
      Pipe.End to,
      List<Profile.Point> points,
      double first,
      double last,
      List<Fixture> fixtures,
      boolean shut) {
    List<Profile.Point> piece =
        points.stream().filter(p -> p.along() >= first && p.along() <= last).toList();
    double length = last - first;
    Stretch whole =
        new Stretch(
            run.bore(),
            length,
            run.roughness(),
            losses(run, from, to, first, last),
            fixtures,
            house.viscosity);
    List<Pipe.AirHole> holes =
        run.parts().stream()
            .filter(p -> p instanceof Part.SiphonBreak && isIn(p.along(), first, last, run))
            .map(Part.SiphonBreak.class::cast)
            .filter(hole -> works(hole, run))
            .map(
                hole ->
                    new Pipe.AirHole(
                        hole.id(),
                        hole.along(),
                        hole.elevation(),
                        hole.coveredBy().map(house::place).orElse(house.beyond)))
            .toList();
    boolean blocked = shut || free(run) <= 0 || isBlockedDrain(to) || isBlockedDrain(from);
    house.pipes.add(
        new Pipe(
            run.id(),
            from,
            to,
            new Profile(piece, run.boreArea()),
            whole,
            run.vented(),
            house.effects(Effect.PrimesEarly.class).stream()
                .anyMatch(early -> early.run().equals(run.id())),
            blocked,
            free(run),
            holes));
  }

  /** What sits just where a run came apart stays with the second piece. */
  private static boolean isIn(double along, double first, double last, Run run) {
    return along >= first && (along < last || last >= run.length());
  }

  /** Whether it ends at a drain that takes nothing and does not stand up to there either. */
  private boolean isBlockedDrain(Pipe.End end) {
    return house.takesNothing(end.node().id) && end.level() < end.elevation();
  }

  private double free(Run run) {
    return house.effects(Effect.RunNarrowed.class).stream()
        .filter(e -> e.run().equals(run.id()))
        .mapToDouble(Effect.RunNarrowed::free)
        .min()
        .orElse(1);
  }

  private boolean works(Part.SiphonBreak hole, Run run) {
    double area = hole.count() * Math.PI / 4 * hole.diameter() * hole.diameter();
    boolean heldShut =
        house.effects(Effect.SiphonBreakHeldShut.class).stream()
            .anyMatch(e -> e.siphonBreak().equals(hole.id()));
    return !heldShut && area >= BREAKS_A_SIPHON / 4 * run.boreArea() * (1 - 1e-9);
  }

  /**
   * A run that names an entrance or an exit names all that its drawn ends cost. Where it begins or
   * ends at a tee it has no such end to name, nor where it came apart.
   */
  private double losses(Run run, Pipe.End from, Pipe.End to, double first, double last) {
    double k = run.extraLoss();
    double entrance = 0;
    double exit = 0;
    for (Run.FittingCount count : run.fittings()) {
      double loss = count.count() * Laws.lossOf(count.kind());
      if (count.kind().name().endsWith("ENTRANCE")) {
        entrance += loss;
      } else if (count.kind() == Fitting.EXIT) {
        exit += loss;
      } else {
        k += loss;
      }
    }
    k *= (last - first) / run.length();
    boolean named = entrance + exit > 0;
    boolean namedFirst = named && first <= 0 && !(run.from() instanceof RunEnd.AtJunction);
    boolean namedLast = named && last >= run.length() && !(run.to() instanceof RunEnd.AtJunction);
    k += from.node() instanceof Place ? (namedFirst ? entrance : SHARP_ENTRANCE) : 0;
    k += to.node() instanceof Place ? (namedLast ? exit : EXIT) : 0;
    double free = free(run);
    return k + (free < 1 ? Math.pow(1 / (Laws.HOLE * free) - 1, 2) : 0);
  }

  private List<Fixture> fixtures(Run run) {
    double perFlowSquared = 1 / (2 * Laws.G * run.boreArea() * run.boreArea());
    List<Fixture> fixtures = new ArrayList<>();
    for (Part part : run.parts()) {
      switch (part) {
        case Part.Pump pump ->
            fixtures.add(
                new Fixture.Pump(
                    pump.id(),
                    pump.along(),
                    pump.curve(),
                    pump.speed(),
                    share(pump),
                    pump.stoppedLoss() * perFlowSquared,
                    pump.kind() == Part.Pump.Kind.DISPLACEMENT,
                    pump.primesAgain()));
        case Part.Valve valve ->
            fixtures.add(new Fixture.Valve(valve.id(), valve.along(), valve.kv(), valve.opening()));
        case Part.FloatValve valve ->
            fixtures.add(new Fixture.Valve(valve.id(), valve.along(), valve.kv(), 1));
        case Part.Restrictor narrow ->
            fixtures.add(new Fixture.Valve(narrow.id(), narrow.along(), narrow.kv(), 1));
        case Part.CheckValve check -> fixtures.add(check(check, perFlowSquared));
        case Part.SiphonBreak hole -> {}
        case Part.Joint joint -> {}
        case Part.Strainer strainer ->
            fixtures.add(
                new Fixture.Loss(
                    strainer.id(), strainer.along(), strainer.loss() * perFlowSquared));
        case Part.Device device ->
            fixtures.add(
                new Fixture.Loss(device.id(), device.along(), device.loss() * perFlowSquared));
      }
    }
    if (run.from() instanceof RunEnd.AtSupply at && supply(at.at()).maximumFlow().isPresent()) {
      Supply supply = supply(at.at());
      double most = supply.maximumFlow().getAsDouble();
      double head = supply.pressure().orElse(1e8) / (house.density * Laws.G);
      fixtures.add(new Fixture.Source(supply.id(), head / (most * most)));
    }
    fixtures.forEach(fixture -> house.fixtures.put(fixture.id, fixture));
    return fixtures;
  }

  private double share(Part.Pump pump) {
    return house.effects(Effect.PumpWeakened.class).stream()
        .filter(e -> e.pump().equals(pump.id()))
        .mapToDouble(Effect.PumpWeakened::fraction)
        .reduce(1, (a, b) -> a * b);
  }

  private Fixture.Check check(Part.CheckValve valve, double perFlowSquared) {
    boolean shut =
        house.effects(Effect.CheckValveHeldShut.class).stream()
            .anyMatch(e -> e.checkValve().equals(valve.id()));
    boolean open =
        house.effects(Effect.CheckValveHeldOpen.class).stream()
            .anyMatch(e -> e.checkValve().equals(valve.id()));
    double leak =
        house.effects(Effect.CheckValveLeaks.class).stream()
            .filter(e -> e.checkValve().equals(valve.id()))
            .mapToDouble(Effect.CheckValveLeaks::area)
            .sum();
    return new Fixture.Check(
        valve.id(),
        valve.along(),
        valve.crackingHead(),
        valve.loss() * perFlowSquared,
        shut,
        open,
        leak);
  }
}
