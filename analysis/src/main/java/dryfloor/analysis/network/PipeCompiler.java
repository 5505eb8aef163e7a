package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.hydraulics.Water;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Compiles runs into pipes. A run that has come apart becomes two pipes that both end in the air; a
 * run that leaks becomes two that meet at a tee with a hole.
 */
final class PipeCompiler {

  /** Pressure taken for a source that delivers its flow whatever stands against it (Pa). */
  static final double STRONG_PRESSURE = 1e8;

  private final Installation installation;
  private final Effects effects;
  private final Water water;
  private final Registry registry;
  private final FixtureCompiler fixtureCompiler;

  PipeCompiler(Installation installation, Effects effects, Water water, Registry registry) {
    this.installation = installation;
    this.effects = effects;
    this.water = water;
    this.registry = registry;
    this.fixtureCompiler = new FixtureCompiler(effects, registry);
  }

  /** Registers the powered parts of a run, which other elements refer to. */
  void addParts(Run run) {
    for (Part part : run.parts()) {
      switch (part) {
        case Part.Pump pump -> registry.addPart(powered(run, pump));
        case Part.Valve valve -> {
          if (valve.drive() instanceof Part.Valve.Drive.Powered powered) {
            registry.addPart(powered(valve, powered));
          }
        }
        case Part.FloatValve floatValve -> {}
        case Part.CheckValve checkValve -> {}
        case Part.SiphonBreak siphonBreak -> {}
        case Part.Joint joint -> {}
        case Part.Strainer strainer -> {}
        case Part.Restrictor restrictor -> {}
        case Part.Device device -> {}
      }
    }
  }

  private PoweredPart powered(Run run, Part.Pump pump) {
    boolean fromPool = run.from() instanceof RunEnd.Opening;
    return new PoweredPart(
        pump.id(),
        pump.power(),
        fromPool ? registry.place(run.from().at()) : -1,
        run.from() instanceof RunEnd.Opening opening ? opening.elevation() : 0,
        pump.primesAgain(),
        Optional.empty(),
        effects.has(Effect.PumpCannotRun.class, e -> e.pump().equals(pump.id())),
        effects.has(Effect.IgnoresControls.class, e -> e.part().equals(pump.id())),
        false);
  }

  private PoweredPart powered(Part.Valve valve, Part.Valve.Drive.Powered drive) {
    return new PoweredPart(
        valve.id(),
        drive.power(),
        -1,
        0,
        true,
        Optional.of(new PoweredPart.ValvePositions(valve.opening(), drive.rest())),
        false,
        effects.has(Effect.IgnoresControls.class, e -> e.part().equals(valve.id())),
        effects.has(Effect.ValveFrozen.class, e -> e.valve().equals(valve.id())));
  }

  /** Registers the pipes that are left of a run. */
  void addPipes(Run run) {
    RunPiece whole = RunPiece.of(run, end(run, Failure.End.FIRST), end(run, Failure.End.SECOND));
    Optional<Effect.RunParted> parted =
        effects.first(Effect.RunParted.class, e -> e.run().equals(run.id()));
    Optional<Effect.RunLeaks> leaks =
        effects.first(Effect.RunLeaks.class, e -> e.run().equals(run.id()));
    if (parted.isPresent()) {
      Effect.RunParted cut = parted.get();
      PipeEnd open = lying(cut.landing(), cut.elevation());
      int before = cut.partsBefore().orElse(whole.partsBefore(cut.along()));
      List<Part> parts = whole.parts();
      List<Part> beyond = parts.subList(before, parts.size());
      add(run, whole.upTo(cut.along(), open.elevation(), open, parts.subList(0, before)), false);
      add(run, whole.after(cut.along(), open.elevation(), open, beyond), false);
    } else if (leaks.isPresent()) {
      addLeaking(run, whole, leaks.get());
    } else {
      add(run, whole, false);
    }
  }

  private void addLeaking(Run run, RunPiece whole, Effect.RunLeaks leak) {
    int pool = registry.add(NetworkCompiler.teePool(run.id(), leak.elevation(), run.bore()));
    boolean open = effects.has(Effect.RunsPartlyFull.class, e -> e.run().equals(run.id()));
    boolean startsFull = run.duty() == Run.Duty.FEED && !open;
    int tee =
        registry.addTee(new Tee(run.id(), leak.elevation(), pool, run.bore(), startsFull, open));
    PipeEnd atLeak = PipeEnd.at(tee, registry.tees.get(tee));
    int before = leak.partsBefore().orElse(whole.partsBefore(leak.along()));
    List<Part> parts = whole.parts();
    List<Part> beyond = parts.subList(before, parts.size());
    add(run, whole.upTo(leak.along(), leak.elevation(), atLeak, parts.subList(0, before)), false);
    add(run, whole.after(leak.along(), leak.elevation(), atLeak, beyond), leak.blockedBeyond());
    int landing = registry.place(leak.landing());
    int slot = registry.addAccount(run.id(), Ledger.Way.LEAK, pool, landing, false);
    registry.paths.add(new Path.PipeHole(pool, landing, slot, tee, leak.elevation(), leak.area()));
  }

  /** An open end over a vessel or floor; it can't lie below the bottom of it. */
  private PipeEnd lying(String landing, double elevation) {
    int place = registry.place(landing);
    double ground = registry.places.get(place).table().bottom();
    return new PipeEnd(place, -1, Math.max(elevation, ground), elevation <= ground, true);
  }

  private PipeEnd end(Run run, Failure.End which) {
    Optional<Effect.EndMoved> moved =
        effects.first(Effect.EndMoved.class, e -> e.run().equals(run.id()) && e.end() == which);
    if (moved.isPresent()) {
      return lying(moved.get().landing(), moved.get().elevation());
    }
    RunEnd end = which == Failure.End.FIRST ? run.from() : run.to();
    return switch (end) {
      case RunEnd.Opening opening ->
          PipeEnd.fixed(registry.place(opening.at()), opening.elevation());
      case RunEnd.AtJunction junction -> {
        int tee = registry.tee(junction.at());
        yield PipeEnd.at(tee, registry.tees.get(tee));
      }
      case RunEnd.AtSupply supply ->
          PipeEnd.fixed(registry.place(supply.at()), supply(supply.at()).elevation());
      case RunEnd.AtDrain drain ->
          PipeEnd.fixed(registry.place(drain.at()), drain(drain.at()).elevation());
    };
  }

  private Supply supply(String id) {
    return installation.supplies().stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Drain drain(String id) {
    return installation.drains().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
  }

  private void add(Run run, RunPiece piece, boolean blocked) {
    List<PipeFixture> fixtures = new ArrayList<>();
    for (Part part : piece.parts()) {
      fixtureCompiler.add(run, piece, part, fixtures);
      if (part instanceof Part.Device device) {
        addHeldWater(run, piece, device);
      }
    }
    if (blocked) {
      fixtures.addFirst(new PipeFixture.BlockedFixture(0));
    }
    double free =
        effects
            .first(Effect.RunNarrowed.class, e -> e.run().equals(run.id()))
            .map(Effect.RunNarrowed::free)
            .orElse(1.0);
    if (free <= 0) {
      fixtures.addFirst(new PipeFixture.BlockedFixture(0));
    } else if (free < 1) {
      fixtures.addFirst(new PipeFixture.NarrowedFixture(0, free, narrowingLoss(free)));
    }
    if (beginsAtProtectedSupply(piece)) {
      fixtures.addFirst(new PipeFixture.CheckFixture(0, 0, 0, 0));
    }
    if (endsAtSurchargedDrain(piece)) {
      fixtures.addLast(new PipeFixture.BlockedFixture(piece.length()));
    }
    addPipe(run, piece, fixtures);
  }

  /**
   * Loss of an opening narrowed to a share of its area (velocity heads in the full bore), from the
   * contraction and sudden enlargement behind it: (1/(0.61·share) − 1)², Borda–Carnot. That holds
   * where water fills the bore behind it; into air nothing is won back, see {@link
   * dryfloor.analysis.hydraulics.Lip}.
   */
  private static double narrowingLoss(double free) {
    double jet = 1 / (0.61 * free) - 1;
    return jet * jet;
  }

  /** Whether an air gap or a backflow preventer lets no water back into the supply. */
  private boolean beginsAtProtectedSupply(RunPiece piece) {
    Place place = registry.places.get(piece.first().place());
    return place.kind() == Place.Kind.SUPPLY
        && supply(place.id()).protection() != Supply.Protection.NONE;
  }

  private boolean endsAtSurchargedDrain(RunPiece piece) {
    Place place = registry.places.get(piece.second().place());
    return place.kind() == Place.Kind.DRAIN
        && effects.has(Effect.DrainTakesNothing.class, e -> e.drain().equals(place.id()))
        && place.head() < piece.second().elevation();
  }

  private void addPipe(Run run, RunPiece piece, List<PipeFixture> fixtures) {
    double share = run.length() > 0 ? piece.length() / run.length() : 1;
    LegProfile profile = new LegProfile(piece.points(), run.boreArea());
    int first = piece.first().place();
    int second = piece.second().place();
    int firstColumn = registry.add(Place.pool(run.id(), Place.Kind.COLUMN, profile.table(0)));
    int secondColumn = registry.add(Place.pool(run.id(), Place.Kind.COLUMN, profile.table(1)));
    // A run that leaks still carries its water; only what its hole lets out is lost.
    boolean open =
        effects.has(Effect.RunParted.class, e -> e.run().equals(run.id())) || slippedOut(run);
    Ledger.Way atFirst = open && piece.first().loose() ? Ledger.Way.PARTED : Ledger.Way.RUN;
    Ledger.Way atSecond = open && piece.second().loose() ? Ledger.Way.PARTED : Ledger.Way.RUN;
    Ledger.Way through = atFirst == Ledger.Way.RUN ? atSecond : atFirst;
    int slot = addAccount(run, through, first, second);
    addAccount(run, atFirst, first, firstColumn);
    addAccount(run, atSecond, second, secondColumn);
    addAccount(run, atFirst, first, secondColumn);
    addAccount(run, atSecond, second, firstColumn);
    Place source = registry.places.get(first);
    double supplyFlow =
        source.kind() == Place.Kind.SUPPLY ? supply(source.id()).maximumFlow().orElse(0) : 0;
    registry.pipes.add(
        new Pipe(
            run.id(),
            List.of(
                new Pipe.Leg(piece.first(), firstColumn, profile.volume(0), piece.firstLoss()),
                new Pipe.Leg(piece.second(), secondColumn, profile.volume(1), piece.secondLoss())),
            run.bore(),
            piece.length(),
            run.roughness(),
            water.kinematicViscosity(),
            piece.points().stream()
                .map(point -> new Pipe.Bend(point.along(), point.elevation()))
                .toList(),
            profile.crest(),
            profile.crestAlong(),
            FittingLoss.entrance(run),
            (FittingLoss.between(run) + run.extraLoss()) * share,
            supplyFlow > 0 ? source.head() - piece.first().elevation() : 0,
            supplyFlow,
            fixtures,
            piece.vented(),
            effects.has(Effect.PrimesEarly.class, e -> e.run().equals(run.id())),
            run.duty() != Run.Duty.EMERGENCY,
            slot,
            piece.from()));
  }

  /** What passes an end that is where it was drawn stays inside, even if the other one is open. */
  private int addAccount(Run run, Ledger.Way way, int from, int to) {
    return registry.addAccount(run.id(), way, from, to, way == Ledger.Way.RUN);
  }

  /** Whether an end has left the place it was drawn at; one that only sinks deeper has not. */
  private boolean slippedOut(Run run) {
    return effects.has(
        Effect.EndMoved.class,
        e -> {
          RunEnd drawn = e.end() == Failure.End.FIRST ? run.from() : run.to();
          return e.run().equals(run.id()) && !e.landing().equals(drawn.at());
        });
  }

  /**
   * A device gives its water back to the place at the run's first end when its pump stops. Where
   * the run has come apart between the two, or before both, it does so at once, and its water comes
   * out of the open end before it.
   */
  private void addHeldWater(Run run, RunPiece piece, Part.Device device) {
    Optional<Part.Pump> pump =
        run.parts().stream()
            .filter(Part.Pump.class::isInstance)
            .map(Part.Pump.class::cast)
            .findFirst();
    if (device.holds() <= 0 || pump.isEmpty() || !(run.from() instanceof RunEnd.Opening)) {
      return;
    }
    boolean parted = effects.has(Effect.RunParted.class, e -> e.run().equals(run.id()));
    boolean first = !parted || piece.from() <= 0;
    PipeEnd end = first ? end(run, Failure.End.FIRST) : piece.first();
    int held =
        registry.add(
            Place.pool(device.id(), Place.Kind.DEVICE, LevelTable.upright(0, device.holds())));
    int slot =
        first
            ? registry.addAccount(
                device.id(), Ledger.Way.HELD_BY_DEVICE, end.place(), held, !end.lies())
            : registry.addAccount(run.id(), Ledger.Way.PARTED, end.place(), held, false);
    boolean fed = first && (!parted || piece.parts().contains(pump.get()));
    int part = fed ? registry.part(pump.get().id()) : -1;
    registry.paths.add(
        new Path.Held(end.place(), held, slot, device.holds(), part, end, run.bore()));
  }
}
