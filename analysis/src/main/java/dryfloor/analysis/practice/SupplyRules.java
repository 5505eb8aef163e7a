package dryfloor.analysis.practice;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.graph.HydraulicGroup;
import dryfloor.model.graph.WaterGraph;
import dryfloor.model.part.Part;
import dryfloor.model.part.Part.Valve.Rest;
import java.util.List;
import java.util.stream.Stream;

/** Rules about water that comes from outside without end. */
final class SupplyRules {

  private static final double LEAST_GAP = 0.020;
  private static final double GAP_IN_BORES = 2;

  private final Installation drawing;
  private final List<HydraulicGroup> groups;

  SupplyRules(Installation drawing) {
    this.drawing = drawing;
    this.groups = WaterGraph.of(drawing).hydraulicGroups();
  }

  Stream<Warning> all() {
    return drawing.supplies().stream()
        .flatMap(
            supply ->
                Stream.of(airGaps(supply), intoCirculation(supply), withoutPower(supply))
                    .flatMap(warnings -> warnings));
  }

  /** The runs that carry a supply's water, as far as the first open water. */
  private List<Run> runsOf(Supply supply) {
    List<Run> direct =
        drawing.runs().stream()
            .filter(run -> run.from().at().equals(supply.id()) || run.to().at().equals(supply.id()))
            .toList();
    return drawing.runs().stream()
        .filter(
            run ->
                groups.stream()
                    .filter(group -> group.runs().contains(run.id()))
                    .anyMatch(
                        group -> direct.stream().anyMatch(d -> group.runs().contains(d.id()))))
        .toList();
  }

  /** An outlet of a run over or in a vessel. */
  private record Outlet(Run run, RunEnd.Opening opening, Vessel vessel) {}

  private Stream<Outlet> outlets(Supply supply) {
    return runsOf(supply).stream()
        .flatMap(
            run ->
                Stream.of(run.from(), run.to())
                    .filter(RunEnd.Opening.class::isInstance)
                    .map(RunEnd.Opening.class::cast)
                    .flatMap(opening -> in(run, opening)));
  }

  private Stream<Outlet> in(Run run, RunEnd.Opening opening) {
    return drawing.vessels().stream()
        .filter(vessel -> vessel.id().equals(opening.at()))
        .map(vessel -> new Outlet(run, opening, vessel));
  }

  /** Where the drawing says that there is an air gap; where there is nothing, a caution says so. */
  private Stream<Warning> airGaps(Supply supply) {
    return switch (supply.protection()) {
      case AIR_GAP -> outlets(supply).flatMap(outlet -> airGap(supply, outlet));
      case BACKFLOW_PREVENTER -> Stream.empty();
      case NONE -> Stream.empty();
    };
  }

  private static Stream<Warning> airGap(Supply supply, Outlet outlet) {
    double gap = outlet.opening().elevation() - outlet.vessel().rim();
    double needed = Math.max(LEAST_GAP, GAP_IN_BORES * outlet.run().bore());
    return gap < needed - 1e-9
        ? Stream.of(
            new Warning.AirGapTooSmall(
                supply.id(), outlet.run().id(), outlet.vessel().id(), gap, needed))
        : Stream.empty();
  }

  private Stream<Warning> intoCirculation(Supply supply) {
    return outlets(supply)
        .filter(outlet -> circulates(outlet.vessel()))
        .map(
            outlet ->
                new Warning.MainsInCirculation(
                    supply.id(), outlet.run().id(), outlet.vessel().id()));
  }

  private static boolean circulates(Vessel vessel) {
    return switch (vessel.role()) {
      case DISPLAY, OVERFLOW_BOX, SUMP, SKIMMER_BODY, REFUGIUM, RACEWAY, HEADER -> true;
      case RESERVOIR, MIXING_VAT, QUARANTINE, BASIN -> false;
    };
  }

  private Stream<Warning> withoutPower(Supply supply) {
    return runsOf(supply).stream()
        .flatMap(run -> run.parts().stream())
        .filter(SupplyRules::staysOpen)
        .map(valve -> new Warning.OpenWithoutPower(supply.id(), valve.id()));
  }

  private static boolean staysOpen(Part part) {
    return part instanceof Part.Valve valve
        && valve.drive() instanceof Part.Valve.Drive.Powered powered
        && powered.rest() != Rest.CLOSED;
  }
}
