package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Vessel.Displacement;
import dryfloor.model.element.Weir;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/** The drawing with its failures, as places, ways, tees and pipes. */
final class House {

  /** Opening that a failed wall leaves (m²). */
  private static final double BURST = 0.2;

  private static final double FAR_BELOW = -1e6;

  final Installation drawing;
  final List<Effect> effects;
  final Map<String, Place> places = new TreeMap<>();
  final Map<String, Tee> tees = new TreeMap<>();

  /** Tees that pipes join to one another. */
  final List<List<Tee>> joinedTees = new ArrayList<>();

  final List<Pipe> pipes = new ArrayList<>();
  final List<Way> ways = new ArrayList<>();
  final Map<String, Fixture> fixtures = new TreeMap<>();
  final Place beyond = Place.outside("beyond", FAR_BELOW);
  final Switching switching;
  final double density;
  final double viscosity;

  House(Installation drawing, List<Effect> effects) {
    this.drawing = drawing;
    this.effects = effects;
    double salinity = meanSalinity();
    density = Laws.density(drawing.conditions().celsius(), salinity);
    viscosity = Laws.viscosity(drawing.conditions().celsius(), salinity);
    addPlaces();
    drawing.junctions().forEach(j -> tees.put(j.id(), new Tee(j.id(), j.elevation())));
    new Plumbing(this).addPipes();
    tees.values().forEach(this::join);
    switching = new Switching(this);
    addWays();
  }

  /** Puts a tee to those that its pipes lead to. */
  private void join(Tee tee) {
    List<Tee> joined = new ArrayList<>(List.of(tee));
    for (List<Tee> others : List.copyOf(joinedTees)) {
      if (others.stream().anyMatch(other -> !Collections.disjoint(other.pipes, tee.pipes))) {
        joined.addAll(others);
        joinedTees.remove(others);
      }
    }
    joinedTees.add(joined);
  }

  <T extends Effect> List<T> effects(Class<T> kind) {
    return effects.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  Place place(String id) {
    Place place = places.get(id);
    if (place == null) {
      throw new IllegalArgumentException("no place is called '" + id + "'");
    }
    return place;
  }

  /** Where an opening in a vessel opens: into what the vessel stood in once its wall is gone. */
  Place opensInto(String id) {
    return effects(Effect.VesselLost.class).stream()
        .filter(e -> e.vessel().equals(id))
        .findFirst()
        .map(e -> place(e.landing()))
        .orElseGet(() -> place(id));
  }

  private double meanSalinity() {
    double water = 0;
    double salt = 0;
    for (Vessel vessel : drawing.vessels()) {
      double volume = netVolume(vessel, vessel.level());
      water += volume;
      salt += volume * vessel.salinity();
    }
    return water > 0 ? salt / water : 0;
  }

  // Places.

  private void addPlaces() {
    for (Vessel vessel : drawing.vessels()) {
      Place place =
          Place.inside(
              vessel.id(),
              vessel.isBasin() ? Place.Kind.BASIN : Place.Kind.VESSEL,
              vessel.bottom(),
              DoubleStream.concat(
                  bottomsIn(vessel.id()),
                  vessel.contents().stream()
                      .flatMapToDouble(c -> DoubleStream.of(c.from(), c.to()))
                      .map(depth -> vessel.bottom() + depth)),
              z -> netVolume(vessel, z));
      place.volume = place.volumeAt(vessel.level());
      places.put(vessel.id(), place);
    }
    drawing
        .floors()
        .forEach(
            floor ->
                places.put(
                    floor.id(),
                    Place.inside(
                        floor.id(),
                        Place.Kind.FLOOR,
                        floor.elevation(),
                        DoubleStream.empty(),
                        z -> floor.area() * (z - floor.elevation()))));
    drawing
        .drains()
        .forEach(drain -> places.put(drain.id(), Place.outside(drain.id(), headAt(drain))));
    drawing
        .supplies()
        .forEach(supply -> places.put(supply.id(), Place.outside(supply.id(), headOf(supply))));
  }

  /** A drain that is known to back up stands up to there when it takes nothing (m). */
  private double headAt(Drain drain) {
    return takesNothing(drain.id()) ? drain.surchargeLevel().orElse(FAR_BELOW) : FAR_BELOW;
  }

  boolean takesNothing(String drain) {
    return effects(Effect.DrainTakesNothing.class).stream().anyMatch(e -> e.drain().equals(drain));
  }

  private double headOf(Supply supply) {
    double factor =
        effects(Effect.SupplyPressureTimes.class).stream()
            .filter(e -> e.supply().equals(supply.id()))
            .mapToDouble(Effect.SupplyPressureTimes::factor)
            .reduce(1, (a, b) -> a * b);
    return supply.elevation() + supply.pressure().orElse(1e8) * factor / (density * Laws.G);
  }

  private double netVolume(Vessel vessel, double level) {
    double depth = level - vessel.bottom();
    double contents =
        vessel.contents().stream().mapToDouble((Displacement c) -> c.volumeBelow(depth)).sum();
    return vessel.shape().volumeBelow(depth) - contents - standing(vessel.id(), level);
  }

  /** Of a vessel whose wall is gone only the contents still take room. */
  private double takes(Vessel vessel, double depth) {
    return isLost(vessel.id())
        ? vessel.contents().stream().mapToDouble(c -> c.volumeBelow(depth)).sum()
        : vessel.shape().volumeBelow(depth);
  }

  /** A hole and the tee that stands for the place in the pipe where it is. */
  record Hole(Tee tee, Tee.TeeHole hole) {}

  List<Hole> holes() {
    return tees.values().stream()
        .flatMap(tee -> tee.holes.stream().map(hole -> new Hole(tee, hole)))
        .toList();
  }

  boolean isLost(String vessel) {
    return effects(Effect.VesselLost.class).stream().anyMatch(e -> e.vessel().equals(vessel));
  }

  private DoubleStream bottomsIn(String place) {
    return drawing.vessels().stream()
        .filter(vessel -> vessel.standsIn().equals(place))
        .mapToDouble(Vessel::bottom);
  }

  /** What vessels that stand in a place take of its room below an elevation (m³). */
  private double standing(String place, double level) {
    return drawing.vessels().stream()
        .filter(vessel -> vessel.standsIn().equals(place))
        .mapToDouble(vessel -> takes(vessel, level - vessel.bottom()))
        .sum();
  }

  // Ways.

  private void addWays() {
    for (Weir weir : drawing.weirs()) {
      double free =
          effects(Effect.WeirNarrowed.class).stream()
              .filter(e -> e.weir().equals(weir.id()))
              .mapToDouble(Effect.WeirNarrowed::free)
              .min()
              .orElse(1);
      ways.add(
          Way.over(
              Way.Kind.WEIR,
              weir.id(),
              opensInto(weir.from()),
              opensInto(weir.to()),
              weir.crest(),
              weir.length() * free));
    }
    for (Vessel vessel : drawing.vessels()) {
      ways.add(
          Way.over(
              Way.Kind.RIM,
              vessel.id(),
              place(vessel.id()),
              place(vessel.standsIn()),
              vessel.rim(),
              vessel.spillEdge()));
    }
    drawing
        .floors()
        .forEach(
            floor ->
                ways.add(
                    Way.over(
                        Way.Kind.SILL,
                        floor.id(),
                        place(floor.id()),
                        floor.spillsTo().map(this::place).orElse(beyond),
                        floor.sillElevation(),
                        floor.sillLength())));
    for (Effect.VesselLeaks leak : effects(Effect.VesselLeaks.class)) {
      addLeak(leak.vessel(), leak.landing(), leak.elevation(), leak.area());
    }
    for (Effect.VesselLost lost : effects(Effect.VesselLost.class)) {
      Place vessel = place(lost.vessel());
      ways.add(
          new Way(
              Way.Kind.LOST,
              vessel.id,
              vessel,
              place(lost.landing()),
              vessel.bottom,
              BURST,
              0,
              0,
              () -> true));
    }
    for (Effect.Thrown thrown : effects(Effect.Thrown.class)) {
      ways.add(
          new Way(
              Way.Kind.THROWN,
              thrown.vessel(),
              place(thrown.vessel()),
              place(thrown.landing()),
              thrown.downTo(),
              thrown.flow(),
              0,
              0,
              () -> switching.runs(thrown.powered()) && !hasLostPrime(thrown.powered())));
    }
  }

  private boolean hasLostPrime(String part) {
    return fixtures.get(part) instanceof Fixture.Pump pump && pump.lostPrime;
  }

  private void addLeak(String vessel, String landing, double elevation, double area) {
    ways.add(
        new Way(
            Way.Kind.LEAK,
            vessel,
            place(vessel),
            place(landing),
            elevation,
            area,
            0,
            0,
            () -> true));
  }
}
