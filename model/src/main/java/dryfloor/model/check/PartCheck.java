package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Checks what sits in the runs. */
final class PartCheck {

  private final Drawing drawing;
  private final Findings findings;

  PartCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    for (Run run : drawing.installation().runs()) {
      for (Part part : run.parts()) {
        check(run, part);
      }
    }
  }

  private void check(Run run, Part part) {
    switch (part) {
      case Part.Pump pump -> {
        checkCurve(pump);
        checkSpeed(pump);
        checkLanding(run, part, pump.standsIn());
      }
      case Part.Valve valve -> checkOpening(valve);
      case Part.FloatValve valve ->
          drawing.vessel(valve.vessel()).ifPresent(vessel -> checkFloat(valve, vessel));
      case Part.SiphonBreak hole -> checkSiphonBreak(run, hole);
      case Part.Joint joint -> checkLanding(run, part, joint.standsIn());
      case Part.Device device -> checkLanding(run, part, device.standsIn());
      case Part.CheckValve other -> {}
      case Part.Strainer other -> {}
      case Part.Restrictor other -> {}
    }
  }

  private void checkCurve(Part.Pump pump) {
    List<Part.Pump.CurvePoint> curve = pump.curve();
    if (curve.size() < 2) {
      findings.error(
          pump.id(),
          "curve",
          "a pump curve with fewer than two points",
          "two or more points from the maker, such as [[\"0 L/min\", \"3 m\"], [\"50 L/min\", \"1 m\"]]");
    }
    for (int i = 1; i < curve.size(); i++) {
      Part.Pump.CurvePoint before = curve.get(i - 1);
      Part.Pump.CurvePoint here = curve.get(i);
      if (here.flow() <= before.flow()) {
        findings.error(
            pump.id(),
            "curve[" + i + "]",
            "the flow does not rise from point to point",
            "list the points from no flow to full flow");
      } else if (here.head() >= before.head()) {
        findings.error(
            pump.id(),
            "curve[" + i + "]",
            "the head rises or stays from " + length(before.head()) + " to " + length(here.head()),
            "the head of a pump falls as its flow rises; leave out the points on the rising branch");
      }
    }
  }

  private void checkSpeed(Part.Pump pump) {
    if (pump.speed() <= 0 || pump.speed() > 1.2) {
      findings.error(
          pump.id(),
          "speed",
          "a speed of " + Math.round(pump.speed() * 100) + " % of full speed",
          "above 0 % up to 120 %");
    }
  }

  private void checkOpening(Part.Valve valve) {
    if (valve.opening() < 0 || valve.opening() > 1) {
      findings.error(
          valve.id(),
          "opening",
          "a valve open by " + Math.round(valve.opening() * 100) + " %",
          "from 0 % to 100 %");
    }
  }

  private void checkFloat(Part.FloatValve valve, Vessel vessel) {
    if (exceeds(valve.closesAt(), vessel.rim())) {
      findings.error(
          valve.id(),
          "closesAt",
          "the float closes "
              + length(valve.closesAt() - vessel.rim())
              + " above the rim of '"
              + vessel.id()
              + "'",
          "a closing level below the rim, or it never closes");
    }
    if (exceeds(vessel.bottom() + valve.band(), valve.closesAt())) {
      findings.error(
          valve.id(),
          "closesAt",
          "the float is wide open only below the bottom of '" + vessel.id() + "'",
          "a closing level at least the band of " + length(valve.band()) + " above the bottom");
    }
  }

  private void checkSiphonBreak(Run run, Part.SiphonBreak hole) {
    if (exceeds(hole.diameter(), run.bore())) {
      findings.warning(
          hole.id(),
          "diameter",
          "the hole is wider than the bore of the run, " + length(run.bore()),
          "the diameter of one hole");
    }
    double highest =
        DoubleStream.concat(
                DoubleStream.of(drawing.elevationOf(run.from()), drawing.elevationOf(run.to())),
                run.waypoints().stream().mapToDouble(Run.Waypoint::elevation))
            .max()
            .orElse(Double.NaN);
    if (exceeds(hole.elevation(), highest + run.bore())) {
      findings.warning(
          hole.id(),
          "at",
          "the siphon break lies "
              + length(hole.elevation() - highest)
              + " above the highest point of its run",
          "a height that the run reaches, or a waypoint at its crest");
    }
    if (hole.coveredBy().isEmpty()) {
      checkAboveTheWater(run, hole, highest);
    }
    hole.coveredBy()
        .flatMap(drawing::vessel)
        .ifPresent(
            vessel -> {
              if (exceeds(vessel.bottom(), hole.elevation())
                  || exceeds(hole.elevation(), vessel.rim())) {
                findings.error(
                    hole.id(),
                    "at",
                    "the holes lie outside '" + vessel.id() + "', which never covers them",
                    "a height between its bottom and rim, or no 'coveredBy'");
              }
            });
  }

  /** A hole in the open air stops no siphon from a water that stands above it. */
  private void checkAboveTheWater(Run run, Part.SiphonBreak hole, double highest) {
    for (RunEnd end : List.of(run.from(), run.to())) {
      drawing
          .vessel(end.at())
          .filter(vessel -> exceeds(vessel.level(), hole.elevation()))
          .filter(vessel -> exceeds(highest, vessel.level()))
          .ifPresent(
              vessel ->
                  findings.warning(
                      hole.id(),
                      "at",
                      "the siphon break lies "
                          + length(vessel.level() - hole.elevation())
                          + " below the water of '"
                          + vessel.id()
                          + "' and in the open air: it can spray while the run is full, and a siphon"
                          + " goes on until the water has fallen to it",
                      "a height above the water, or 'coveredBy' if the holes are in the water"));
    }
  }

  private void checkLanding(Run run, Part part, Optional<String> standsIn) {
    if (standsIn.isEmpty() && run.standsIn().isEmpty()) {
      findings.error(
          part.id(),
          "standsIn",
          "'" + part.id() + "' stands nowhere, so its water would land nowhere",
          "add \"standsIn\" with the basin or floor below it, here or for the whole run");
    }
  }
}
