package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What could be added to a drawing against a failure, in ladders: of each, the first that helps is
 * enough. Sizes and places are common practice; whether it helps is for the simulation to say.
 */
final class Additions {

  /** A siphon break lies so far below the running level (m), or half of that. */
  private static final double BELOW_THE_WATER = 0.01;

  /** Width of each of its two holes: a share of the bore well above what is sure to work. */
  private static final double HOLE = 0.15;

  private static final double LEAST_HOLE = 0.003;

  /** An air gap is twice the bore, 20 mm at least: EN 1717, type AA. */
  private static final double LEAST_GAP = 0.020;

  private static final double GAP_IN_BORES = 2;

  /** A switch stops at these shares of the way from the running level to the rim. */
  private static final List<Double> CUTS_OFF_AT = List.of(0.75, 0.5, 0.25);

  /** Less room than this (m) between running level and rim is none for a switch. */
  private static final double LEAST_ROOM = 0.008;

  private static final double MILLIMETRE = 1e-3;

  private final Installation drawn;
  private final Outcome normal;
  private final FreeId ids;

  /**
   * Additions to a drawing.
   *
   * @param normal its normal operation
   */
  Additions(Installation drawn, Outcome normal) {
    this.drawn = drawn;
    this.normal = normal;
    this.ids = new FreeId(drawn);
  }

  /** Against a failure that ended so, or has no answer: what may help, ladder by ladder. */
  List<List<SingleChange>> against(Optional<Outcome> outcome) {
    List<List<SingleChange>> ladders = new ArrayList<>();
    for (Run run : drawn.runs()) {
      for (End end : End.values()) {
        ladders.add(siphonBreaks(run, end));
      }
      ladders.add(siphonBreakInTheOpen(run));
      ladders.add(airGap(run));
    }
    Standpipes standpipes = new Standpipes(drawn, ids);
    for (Vessel vessel : drawn.vessels()) {
      if (outcome.filter(found -> ranOver(found, vessel)).isPresent()) {
        powered().forEach(part -> ladders.add(cutOffs(vessel, part)));
        ladders.addAll(standpipes.in(vessel, running(vessel)));
      }
    }
    return ladders.stream().filter(ladder -> !ladder.isEmpty()).toList();
  }

  private static boolean ranOver(Outcome outcome, Vessel vessel) {
    return outcome.vessels().stream()
        .anyMatch(
            found ->
                found.id().equals(vessel.id()) && found.highestLevel() >= found.rim() - MILLIMETRE);
  }

  /** Where the water stands in normal operation (elevation, m). */
  private double running(Vessel vessel) {
    return normal.vessels().stream()
        .filter(found -> found.id().equals(vessel.id()))
        .mapToDouble(Outcome.VesselOutcome::levelAfter)
        .findFirst()
        .orElseThrow();
  }

  private Optional<Vessel> vessel(RunEnd end) {
    return end instanceof RunEnd.Opening opening
        ? drawn.vessels().stream().filter(v -> v.id().equals(opening.at())).findFirst()
        : Optional.empty();
  }

  /** Holes just under the water above an opening, where the run climbs past them. */
  private List<SingleChange> siphonBreaks(Run run, End end) {
    RunEnd opening = end == End.FIRST ? run.from() : run.to();
    Course course = new Course(drawn, run, end);
    return vessel(opening).stream()
        .filter(vessel -> !vessel.isBasin())
        .flatMap(
            vessel ->
                Stream.of(BELOW_THE_WATER, BELOW_THE_WATER / 2)
                    .map(below -> wholeMillimetres(vessel, running(vessel) - below))
                    .filter(at -> at > drawn.elevationOf(opening) + MILLIMETRE)
                    .flatMap(
                        at ->
                            course.climbsPast(at).stream()
                                .mapToObj(along -> drilled(run, along, at, Optional.of(vessel)))))
        .toList();
  }

  /** Holes at the crest of a run that climbs over something between its ends. */
  private List<SingleChange> siphonBreakInTheOpen(Run run) {
    return new Course(drawn, run, End.FIRST)
            .crest()
            .filter(crest -> !run.vented())
            .map(crest -> drilled(run, crest.along(), crest.elevation(), Optional.empty()))
            .stream()
            .toList();
  }

  private SingleChange drilled(Run run, double along, double at, Optional<Vessel> coveredBy) {
    double diameter = Math.max(LEAST_HOLE, Math.ceil(HOLE * run.bore() * 1000) / 1000);
    return new SingleChange.SiphonBreakAdded(
        run.id(),
        new Part.SiphonBreak(
            ids.like("added-siphon-break"),
            "Added siphon break",
            along,
            at,
            diameter,
            2,
            coveredBy.map(Vessel::id)));
  }

  /** The outlet of a feed lifted above the rim. */
  private List<SingleChange> airGap(Run run) {
    double gap = Math.max(LEAST_GAP, GAP_IN_BORES * run.bore());
    return vessel(run.to()).stream()
        .filter(vessel -> run.duty() == Run.Duty.FEED && !vessel.isBasin())
        .filter(vessel -> drawn.elevationOf(run.to()) < vessel.rim() + gap - MILLIMETRE)
        .<SingleChange>map(
            vessel ->
                new SingleChange.AirGapMade(
                    run.id(), End.SECOND, vessel.id(), vessel.rim() + gap, gap))
        .toList();
  }

  /** Ids of the pumps and powered valves. */
  private Stream<String> powered() {
    return drawn.runs().stream()
        .flatMap(run -> run.parts().stream())
        .filter(
            part ->
                part instanceof Part.Pump
                    || (part instanceof Part.Valve valve
                        && valve.drive() instanceof Part.Valve.Drive.Powered))
        .map(Part::id);
  }

  private List<SingleChange> cutOffs(Vessel vessel, String part) {
    double running = running(vessel);
    double room = vessel.rim() - running;
    if (room < LEAST_ROOM) {
      return List.of();
    }
    return CUTS_OFF_AT.stream()
        .<SingleChange>map(
            share ->
                new SingleChange.CutOffAdded(
                    new Control.LevelSwitch(
                        ids.like("added-cut-off"),
                        "Added high-level cut-off",
                        vessel.id(),
                        wholeMillimetres(vessel, running + share / 2 * room),
                        wholeMillimetres(vessel, running + share * room),
                        Control.LevelSwitch.Action.STOPS_WHEN_HIGH,
                        List.of(part))))
        .toList();
  }

  static double wholeMillimetres(Vessel vessel, double elevation) {
    return vessel.bottom() + Math.round((elevation - vessel.bottom()) * 1000) * MILLIMETRE;
  }
}
