package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.hydraulics.Water;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compiles a drawing for the solver.
 *
 * <p>Elements are taken in the order of their ids, not of the file, so that the answer does not
 * depend on how the file is sorted.
 */
final class NetworkCompiler {

  /** Level of an outside that never has water: a drain's free outfall, or beyond the drawing. */
  private static final double FAR_BELOW = -1e9;

  /** A wall that fails leaves an opening that empties a large display in seconds (m²). */
  private static final double BURST_AREA = 0.2;

  /** A tee that has drained is a pool this many times its bore long and wide. */
  private static final double TEE_SPREAD = 2;

  private final Installation installation;
  private final Effects effects;
  private final Water water;
  private final Registry registry = new Registry();

  NetworkCompiler(Installation installation, List<Effect> effects) {
    this.installation = installation;
    this.effects = new Effects(List.copyOf(effects));
    this.water = Water.at(installation.conditions().celsius(), meanSalinity(installation));
  }

  FlowNetwork compile() {
    addPlaces();
    addVesselEdges();
    addFloorEdges();
    byId(installation.weirs()).forEach(this::addWeir);
    addTees();
    PipeCompiler pipes = new PipeCompiler(installation, effects, water, registry);
    byId(installation.runs()).forEach(pipes::addParts);
    byId(installation.circulationPumps()).forEach(this::addCirculationPump);
    byId(installation.runs()).forEach(pipes::addPipes);
    addLeaks();
    addThrown();
    addPoured();
    addTaken();
    ControlCompiler controls = new ControlCompiler(effects, registry);
    return new FlowNetwork(
        installation,
        water,
        registry.places,
        registry.accounts,
        registry.paths,
        registry.pipes,
        registry.tees,
        registry.parts,
        byId(installation.controls()).map(controls::unit).toList(),
        effects.all(),
        away());
  }

  private double away() {
    double from =
        effects.every(Effect.AwayFrom.class).mapToDouble(Effect.AwayFrom::time).max().orElse(0);
    return from
        + effects
            .every(Effect.AwayTimes.class)
            .mapToDouble(Effect.AwayTimes::factor)
            .reduce(installation.conditions().away(), (away, factor) -> away * factor);
  }

  private static <E extends Element> Stream<E> byId(List<E> elements) {
    return elements.stream().sorted(Comparator.comparing(Element::id));
  }

  private static double meanSalinity(Installation installation) {
    double volume = 0;
    double salt = 0;
    for (Vessel vessel : byId(installation.vessels()).toList()) {
      double holds = vessel.shape().volumeBelow(vessel.level() - vessel.bottom());
      volume += holds;
      salt += holds * vessel.salinity();
    }
    return volume > 0 ? salt / volume : 0;
  }

  private void addPlaces() {
    Map<String, List<Vessel>> standing =
        byId(installation.vessels()).collect(Collectors.groupingBy(Vessel::standsIn));
    byId(installation.vessels())
        .forEach(
            vessel ->
                registry.addNamed(
                    Place.pool(
                        vessel.id(),
                        vessel.isBasin() ? Place.Kind.BASIN : Place.Kind.VESSEL,
                        LevelTable.of(vessel, standing.getOrDefault(vessel.id(), List.of())))));
    byId(installation.floors())
        .forEach(
            floor ->
                registry.addNamed(
                    Place.pool(
                        floor.id(),
                        Place.Kind.FLOOR,
                        LevelTable.floor(
                            floor,
                            standing.getOrDefault(floor.id(), List.of()).stream()
                                .filter(this::isLost)
                                .toList()))));
    byId(installation.supplies()).forEach(this::addSupply);
    byId(installation.drains())
        .forEach(
            drain ->
                registry.addNamed(
                    Place.outside(drain.id(), Place.Kind.DRAIN, outfallLevel(drain))));
    registry.addNamed(Place.outside(Ledger.BEYOND, Place.Kind.BEYOND, FAR_BELOW));
    registry.addNamed(Place.outside(Ledger.OUTSIDE, Place.Kind.OUTSIDE, FAR_BELOW));
  }

  private boolean isLost(Vessel vessel) {
    return effects.has(Effect.VesselLost.class, lost -> lost.vessel().equals(vessel.id()));
  }

  /** A supply stands at the level to which its pressure would lift water. */
  private void addSupply(Supply supply) {
    double factor =
        effects
            .first(Effect.SupplyPressureTimes.class, e -> e.supply().equals(supply.id()))
            .map(Effect.SupplyPressureTimes::factor)
            .orElse(1.0);
    double pressure = supply.pressure().orElse(PipeCompiler.STRONG_PRESSURE) * factor;
    registry.addNamed(
        Place.outside(
            supply.id(),
            Place.Kind.SUPPLY,
            supply.elevation() + pressure / (water.density() * Physical.GRAVITY)));
  }

  private double outfallLevel(Drain drain) {
    boolean surcharged =
        effects.has(Effect.DrainTakesNothing.class, e -> e.drain().equals(drain.id()));
    return surcharged ? drain.surchargeLevel().orElse(FAR_BELOW) : FAR_BELOW;
  }

  private void addVesselEdges() {
    for (Vessel vessel : byId(installation.vessels()).toList()) {
      int from = registry.place(vessel.id());
      int to = registry.place(vessel.standsIn());
      boolean inside = registry.places.get(to).kind() == Place.Kind.VESSEL;
      int slot = registry.addAccount(vessel.id(), Ledger.Way.RIM, from, to, inside);
      registry.paths.add(
          new Path.Edge(
              from,
              to,
              slot,
              vessel.rim(),
              vessel.spillEdge(),
              vessel.shape().height(),
              vessel.rim() - registry.places.get(to).table().bottom()));
    }
  }

  private void addFloorEdges() {
    for (Floor floor : byId(installation.floors()).toList()) {
      int from = registry.place(floor.id());
      int to = registry.place(floor.spillsTo().orElse(Ledger.BEYOND));
      int slot = registry.addAccount(floor.id(), Ledger.Way.SILL, from, to, false);
      boolean beyond = registry.places.get(to).kind() == Place.Kind.BEYOND;
      double heightTo =
          beyond ? floor.sill() : floor.sillElevation() - registry.places.get(to).table().bottom();
      registry.paths.add(
          new Path.Edge(
              from,
              to,
              slot,
              floor.sillElevation(),
              floor.sillLength(),
              floor.sill(),
              Math.max(heightTo, 0)));
    }
  }

  private void addWeir(Weir weir) {
    double free =
        effects
            .first(Effect.WeirNarrowed.class, e -> e.weir().equals(weir.id()))
            .map(Effect.WeirNarrowed::free)
            .orElse(1.0);
    int from = registry.place(weir.from());
    int to = registry.place(weir.to());
    int slot = registry.addAccount(weir.id(), Ledger.Way.WEIR, from, to, true);
    registry.paths.add(
        new Path.Edge(
            from,
            to,
            slot,
            weir.crest(),
            weir.length() * free,
            weir.crest() - registry.places.get(from).table().bottom(),
            weir.crest() - registry.places.get(to).table().bottom()));
  }

  private void addTees() {
    Map<String, List<Run>> ending = runsByJunction();
    for (Junction junction : byId(installation.junctions()).toList()) {
      List<Run> meeting = ending.getOrDefault(junction.id(), List.of());
      double bore = meeting.stream().mapToDouble(Run::bore).max().orElse(0.02);
      boolean fed = meeting.stream().anyMatch(run -> run.duty() == Run.Duty.FEED);
      registry.addNamedTee(
          new Tee(
              junction.id(),
              junction.elevation(),
              registry.add(teePool(junction.id(), junction.elevation(), bore)),
              bore,
              fed,
              false));
    }
  }

  static Place teePool(String id, double elevation, double bore) {
    double area = TEE_SPREAD * bore * TEE_SPREAD * bore;
    return Place.pool(id, Place.Kind.TEE, LevelTable.upright(elevation, area));
  }

  private Map<String, List<Run>> runsByJunction() {
    Map<String, List<Run>> ending = new HashMap<>();
    for (Run run : installation.runs()) {
      for (RunEnd end : List.of(run.from(), run.to())) {
        if (end instanceof RunEnd.AtJunction) {
          ending.computeIfAbsent(end.at(), junction -> new ArrayList<>()).add(run);
        }
      }
    }
    return ending;
  }

  private void addCirculationPump(CirculationPump pump) {
    registry.addPart(
        new PoweredPart(
            pump.id(),
            pump.power(),
            registry.place(pump.vessel()),
            pump.inlet(),
            true,
            Optional.empty(),
            effects.has(Effect.PumpCannotRun.class, e -> e.pump().equals(pump.id())),
            effects.has(Effect.IgnoresControls.class, e -> e.part().equals(pump.id())),
            false));
  }

  private void addLeaks() {
    effects
        .every(Effect.VesselLeaks.class)
        .forEach(
            leak ->
                addHole(
                    leak.vessel(), leak.landing(), Ledger.Way.LEAK, leak.elevation(), leak.area()));
    effects
        .every(Effect.VesselLost.class)
        .forEach(
            lost ->
                addHole(
                    lost.vessel(),
                    lost.landing(),
                    Ledger.Way.BURST,
                    registry.places.get(registry.place(lost.vessel())).table().bottom(),
                    BURST_AREA));
  }

  private void addHole(
      String vessel, String landing, Ledger.Way way, double elevation, double area) {
    int from = registry.place(vessel);
    int to = registry.place(landing);
    int slot = registry.addAccount(vessel, way, from, to, false);
    registry.paths.add(new Path.Hole(from, to, slot, elevation, area));
  }

  private void addThrown() {
    effects
        .every(Effect.Thrown.class)
        .forEach(
            thrown -> {
              int from = registry.place(thrown.vessel());
              int to = registry.place(thrown.landing());
              int slot = registry.addAccount(thrown.powered(), Ledger.Way.THROWN, from, to, false);
              registry.paths.add(
                  new Path.Thrown(
                      from,
                      to,
                      slot,
                      thrown.downTo(),
                      thrown.flow(),
                      registry.part(thrown.powered())));
            });
  }

  private void addPoured() {
    effects
        .every(Effect.Poured.class)
        .map(Effect.Poured::vessel)
        .distinct()
        .forEach(
            vessel ->
                registry.addAccount(
                    vessel,
                    Ledger.Way.POURED,
                    registry.place(Ledger.OUTSIDE),
                    registry.place(vessel),
                    true));
  }

  private void addTaken() {
    effects
        .every(Effect.Taken.class)
        .map(Effect.Taken::vessel)
        .distinct()
        .forEach(
            vessel ->
                registry.addAccount(
                    vessel,
                    Ledger.Way.TAKEN,
                    registry.place(vessel),
                    registry.place(Ledger.OUTSIDE),
                    true));
  }
}
