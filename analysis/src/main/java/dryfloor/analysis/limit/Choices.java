package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.analysis.limit.Property.*;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What may be chosen in a drawing, between which values, and the drawing with another choice. */
final class Choices {

  /** Rims are looked at up to so much above today's (m). */
  private static final double TALLER = 0.5;

  /** Basins, bores and reservoirs are looked at between these shares of today's. */
  private static final double SMALLEST = 0.25;

  private static final double LARGEST = 4;

  private static final double LEAST_SPEED = 0.05;
  private static final double MOST_SPEED = 1.2;
  private static final double MILLIMETRE = 1e-3;

  private final Installation drawn;

  /** Where the drawing has errors as it is; what was read from a file has none. */
  private final Set<String> faultsAsDrawn;

  Choices(Installation drawn) {
    this.drawn = drawn;
    this.faultsAsDrawn = errors(drawn).map(Choices::place).collect(Collectors.toSet());
  }

  /** Why the drawing with this value chosen can't be, if so. */
  Optional<String> fault(Property property, double value) {
    return faultOf(with(property, value));
  }

  /** Why a drawing that was changed can't be, if so. */
  Optional<String> faultOf(Installation changed) {
    return errors(changed)
        .filter(error -> !faultsAsDrawn.contains(place(error)))
        .map(Finding::message)
        .findFirst();
  }

  private static Stream<Finding> errors(Installation drawing) {
    return DrawingCheck.check(drawing).stream().filter(Finding::isError);
  }

  private static String place(Finding finding) {
    return finding.element() + " " + finding.field();
  }

  /** Everything that may be chosen, in the order of the drawing. */
  List<Property> all() {
    List<Property> all = new ArrayList<>();
    drawn.vessels().forEach(vessel -> addVessel(vessel, all));
    drawn.weirs().forEach(weir -> all.add(new WeirCrest(weir.id())));
    drawn.runs().forEach(run -> addRun(run, all));
    return all;
  }

  private static void addVessel(Vessel vessel, List<Property> all) {
    if (!vessel.isBasin() && vessel.level() > vessel.bottom()) {
      all.add(new RunningLevel(vessel.id()));
    }
    all.add(new Rim(vessel.id()));
    if (vessel.isBasin()) {
      all.add(new BasinSize(vessel.id()));
    }
    if (vessel.role() == Vessel.Role.RESERVOIR && vessel.level() > vessel.bottom()) {
      all.add(new ReservoirVolume(vessel.id()));
    }
  }

  private void addRun(Run run, List<Property> all) {
    addEnd(run, run.from(), End.FIRST, all);
    addEnd(run, run.to(), End.SECOND, all);
    if (drains(run)) {
      all.add(new DrainBore(run.id()));
    }
    for (Part part : run.parts()) {
      switch (part) {
        case Part.Pump pump -> all.add(new PumpSpeed(pump.id()));
        case Part.SiphonBreak hole -> all.add(new SiphonBreakHeight(hole.id()));
        case Part.Valve valve -> {
          if (valve.drive() instanceof Part.Valve.Drive.Hand && valve.opening() > 0) {
            all.add(new ValveOpening(valve.id()));
          }
        }
        case Part.FloatValve floatValve -> {}
        case Part.CheckValve checkValve -> {}
        case Part.Joint joint -> {}
        case Part.Strainer strainer -> {}
        case Part.Restrictor restrictor -> {}
        case Part.Device device -> {}
      }
    }
  }

  private static boolean drains(Run run) {
    return run.duty() != Run.Duty.FEED || run.to() instanceof RunEnd.AtDrain;
  }

  private void addEnd(Run run, RunEnd end, End which, List<Property> all) {
    if (end instanceof RunEnd.Opening opening
        && drawn.vessels().stream().anyMatch(v -> v.id().equals(opening.at()))) {
      all.add(
          opening.kind() == RunEnd.Opening.Kind.STANDPIPE
              ? new StandpipeLip(run.id(), which)
              : new Port(run.id(), which));
    }
  }

  /** The values of a property to look at. */
  Scale scale(Property property) {
    return switch (property) {
      case RunningLevel p -> {
        Vessel vessel = vessel(p.of());
        yield Scale.height(
            vessel.bottom(), vessel.bottom() + MILLIMETRE, vessel.rim(), vessel.level());
      }
      case Rim p -> {
        Vessel vessel = vessel(p.of());
        yield Scale.height(
            vessel.bottom(), vessel.level() + MILLIMETRE, vessel.rim() + TALLER, vessel.rim());
      }
      case BasinSize p -> {
        double today = vessel(p.of()).shape().capacity();
        yield Scale.volume(SMALLEST * today, LARGEST * today, today);
      }
      case ReservoirVolume p -> {
        double today = water(vessel(p.of()));
        yield Scale.volume(SMALLEST * today, LARGEST * today, today);
      }
      case WeirCrest p -> {
        Weir weir = weir(p.of());
        Vessel from = vessel(weir.from());
        Vessel to = vessel(weir.to());
        yield Scale.height(
            from.bottom(),
            Math.max(from.bottom(), to.bottom()),
            Math.min(from.rim(), to.rim()),
            weir.crest());
      }
      case StandpipeLip p -> inVessel(opening(p.of(), p.end()));
      case Port p -> inVessel(opening(p.of(), p.end()));
      case SiphonBreakHeight p -> siphonBreak(hole(p.of()));
      case DrainBore p -> {
        double today = run(p.of()).bore();
        yield Scale.width(SMALLEST * today, LARGEST * today, today);
      }
      case PumpSpeed p -> Scale.share(LEAST_SPEED, MOST_SPEED, pump(p.of()).speed());
      case ValveOpening p -> Scale.share(0, 1, valve(p.of()).opening());
    };
  }

  private Scale inVessel(RunEnd.Opening opening) {
    Vessel vessel = vessel(opening.at());
    double highest = Math.max(vessel.rim(), opening.elevation());
    return Scale.height(vessel.bottom(), vessel.bottom(), highest, opening.elevation());
  }

  /** Within the vessel that covers it, or half a metre up and down. */
  private Scale siphonBreak(Part.SiphonBreak hole) {
    return hole.coveredBy()
        .map(this::vessel)
        .map(v -> Scale.height(v.bottom(), v.bottom(), v.rim(), hole.elevation()))
        .orElseGet(
            () ->
                Scale.height(
                    0, hole.elevation() - TALLER, hole.elevation() + TALLER, hole.elevation()));
  }

  /** The drawing with this value chosen. */
  Installation with(Property property, double value) {
    return switch (property) {
      case RunningLevel p -> Redrawn.vessel(drawn, p.of(), v -> v.withLevel(value));
      case Rim p ->
          Redrawn.vessel(
              drawn, p.of(), v -> v.withShape(Reshaped.tall(v.shape(), value - v.bottom())));
      case BasinSize p ->
          Redrawn.vessel(drawn, p.of(), v -> wider(v, value / v.shape().capacity()));
      case ReservoirVolume p -> Redrawn.vessel(drawn, p.of(), v -> wider(v, value / water(v)));
      case WeirCrest p -> Redrawn.weir(drawn, p.of(), w -> w.withCrest(value));
      case StandpipeLip p -> MovedEnd.of(drawn, p.of(), p.end(), value);
      case Port p -> MovedEnd.of(drawn, p.of(), p.end(), value);
      case SiphonBreakHeight p ->
          Redrawn.part(drawn, p.of(), part -> ((Part.SiphonBreak) part).withElevation(value));
      case DrainBore p -> Redrawn.run(drawn, p.of(), run -> run.withBore(value));
      case PumpSpeed p -> Redrawn.part(drawn, p.of(), part -> ((Part.Pump) part).withSpeed(value));
      case ValveOpening p ->
          Redrawn.part(drawn, p.of(), part -> ((Part.Valve) part).withOpening(value));
    };
  }

  private static Vessel wider(Vessel vessel, double times) {
    return vessel.withShape(Reshaped.wide(vessel.shape(), times));
  }

  private static double water(Vessel vessel) {
    return vessel.shape().volumeBelow(vessel.level() - vessel.bottom());
  }

  // What the drawing has.

  Vessel vessel(String id) {
    return drawn.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
  }

  private Weir weir(String id) {
    return drawn.weirs().stream().filter(w -> w.id().equals(id)).findFirst().orElseThrow();
  }

  private Run run(String id) {
    return drawn.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private RunEnd.Opening opening(String id, End end) {
    return (RunEnd.Opening) (end == End.FIRST ? run(id).from() : run(id).to());
  }

  private Part.SiphonBreak hole(String id) {
    return part(Part.SiphonBreak.class, id);
  }

  private Part.Pump pump(String id) {
    return part(Part.Pump.class, id);
  }

  private Part.Valve valve(String id) {
    return part(Part.Valve.class, id);
  }

  private <P extends Part> P part(Class<P> kind, String id) {
    Stream<Part> parts = drawn.runs().stream().flatMap(run -> run.parts().stream());
    return parts.filter(p -> p.id().equals(id)).map(kind::cast).findFirst().orElseThrow();
  }
}
