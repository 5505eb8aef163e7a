package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.stream.Stream;

/** Checks the ends, the length and the course of runs. */
final class RunCheck {

  private static final double NARROWEST = 0.0005;
  private static final double WIDEST = 3;

  private final Drawing drawing;
  private final Findings findings;

  RunCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    for (Run run : drawing.installation().runs()) {
      checkBore(run);
      checkOpening(run, "from", run.from());
      checkOpening(run, "to", run.to());
      checkDirection(run);
      checkOrder(run);
      checkLegs(run);
      if (run.standsIn().isEmpty()) {
        findings.warning(
            run.id(),
            "standsIn",
            "the run does not say where it spills if it comes apart",
            "name the basin or floor below it; without, its water is taken to land beside the vessel at"
                + " its nearer end");
      }
    }
  }

  private void checkBore(Run run) {
    if (run.bore() < NARROWEST || run.bore() > WIDEST) {
      findings.error(
          run.id(),
          "bore",
          "a bore of " + run.bore() * 1000 + " mm",
          "the inside diameter, from 0.5 mm to 3 m");
    }
  }

  private void checkOpening(Run run, String field, RunEnd end) {
    switch (end) {
      case RunEnd.Opening opening -> checkOpening(run, field + ".at", opening);
      case RunEnd.AtJunction junction -> {}
      case RunEnd.AtSupply supply -> {}
      case RunEnd.AtDrain drain -> {}
    }
  }

  private void checkOpening(Run run, String field, RunEnd.Opening opening) {
    double bottom = drawing.bottomOf(opening.at());
    double rim = drawing.rimOf(opening.at());
    if (exceeds(bottom, opening.elevation())) {
      findings.error(
          run.id(),
          field,
          "the opening lies "
              + length(bottom - opening.elevation())
              + " below the bottom of '"
              + opening.at()
              + "'",
          "0 mm or more above the inside bottom or floor");
    }
    if (opening.kind() != RunEnd.Opening.Kind.FREE) {
      drawing.vessel(opening.at()).ifPresent(vessel -> checkWidth(run, field, vessel, opening));
    }
    boolean mayStandAbove =
        switch (opening.kind()) {
          case PORT, STANDPIPE -> false;
          case FREE -> true;
        };
    if (!mayStandAbove && exceeds(opening.elevation(), rim)) {
      findings.error(
          run.id(),
          field,
          "the opening lies "
              + length(opening.elevation() - rim)
              + " above the rim of '"
              + opening.at()
              + "'",
          "at most "
              + length(rim - bottom)
              + " above the inside bottom; only a free end may hang above the rim");
    }
  }

  /** A bore that is no bore at all has been told already. */
  private void checkWidth(Run run, String field, Vessel vessel, RunEnd.Opening opening) {
    double depth = Math.clamp(opening.elevation() - vessel.bottom(), 0, vessel.shape().height());
    double section = Math.PI / 4 * run.bore() * run.bore();
    if (run.bore() <= WIDEST && section > vessel.shape().areaAt(depth)) {
      findings.error(
          run.id(),
          field,
          "the pipe is wider than '" + vessel.id() + "' is there",
          "a smaller bore, or a larger vessel");
    }
  }

  private void checkDirection(Run run) {
    boolean pumps = run.parts().stream().anyMatch(Part.Pump.class::isInstance);
    if (!pumps && !run.from().equals(run.to()) && run.from().at().equals(run.to().at())) {
      findings.warning(
          run.id(),
          "to",
          "the run leads from '" + run.from().at() + "' back into it, and no pump drives it",
          "the vessel that it should lead to");
    }
    if (run.from().equals(run.to())) {
      findings.error(
          run.id(),
          "to",
          "both ends of the run are the same opening",
          "a run leads from one place to another");
    }
    if (run.from() instanceof RunEnd.AtDrain) {
      findings.warning(
          run.id(), "from", "the run begins at a drain", "a run into a drain ends there: swap");
    }
    if (run.to() instanceof RunEnd.AtSupply) {
      findings.warning(
          run.id(), "to", "the run ends at a supply", "a run from a supply begins there: swap");
    }
  }

  private void checkOrder(Run run) {
    List<Double> points = run.waypoints().stream().map(Run.Waypoint::along).toList();
    for (int i = 0; i < points.size(); i++) {
      checkAlong(run.id(), "waypoints[" + i + "].along", run, points, i);
    }
    List<Double> parts = run.parts().stream().map(part -> part.along()).toList();
    for (int i = 0; i < parts.size(); i++) {
      checkAlong(run.parts().get(i).id(), "along", run, parts, i);
    }
  }

  private void checkAlong(String id, String field, Run run, List<Double> all, int i) {
    double along = all.get(i);
    if (along < 0 || exceeds(along, run.length())) {
      findings.error(
          id,
          field,
          length(along) + " along a run of " + length(run.length()),
          "from 0 mm to the length of the run, counted from its first end");
    } else if (i > 0 && exceeds(all.get(i - 1), along)) {
      findings.error(
          id,
          field,
          "it lies " + length(along) + " along, ahead of the one listed before it",
          "list them in order from the first end of the run, or give 'along' to all of them");
    }
  }

  private void checkLegs(Run run) {
    List<Run.Waypoint> course =
        Stream.of(
                Stream.of(new Run.Waypoint(drawing.elevationOf(run.from()), 0)),
                run.waypoints().stream(),
                Stream.of(new Run.Waypoint(drawing.elevationOf(run.to()), run.length())))
            .flatMap(points -> points)
            .toList();
    double vertical = 0;
    boolean legTooShort = false;
    for (int i = 1; i < course.size(); i++) {
      double rise = Math.abs(course.get(i).elevation() - course.get(i - 1).elevation());
      vertical += rise;
      legTooShort |= exceeds(rise, course.get(i).along() - course.get(i - 1).along());
    }
    if (exceeds(vertical, run.length())) {
      findings.error(
          run.id(),
          "length",
          "the run climbs and falls "
              + length(vertical)
              + " on a length of "
              + length(run.length()),
          "the developed length of the pipe, at least that much");
    } else if (legTooShort) {
      findings.error(
          run.id(),
          "waypoints",
          "one leg climbs or falls more than the pipe between its ends is long",
          "correct 'along', or leave it out to spread the waypoints by height");
    }
  }
}
