package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Checks that what leaves a run on its way can reach the place where it is said to land. */
final class LandingCheck {

  /** Pipes lie in floors, and what they lose may well up: as thick as a floor is built up (m). */
  private static final double FLOOR_BUILD_UP = 0.5;

  /** A part so close along the run (m) says where the run's water lands, too. */
  private static final double CLOSE_BY = 0.25;

  private final Drawing drawing;
  private final Findings findings;

  LandingCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    for (Run run : drawing.installation().runs()) {
      checkRun(run);
      for (Part part : run.parts()) {
        ReferenceCheck.landingOf(part).ifPresent(place -> checkPart(part, place));
      }
    }
  }

  /** The lowest place outside the vessels is where a run comes apart that has no joint. */
  private void checkRun(Run run) {
    Optional<Run.Waypoint> lowest =
        outside(run).min(Comparator.comparingDouble(Run.Waypoint::elevation));
    if (lowest.isPresent() && !aPartSpeaksFor(lowest.get().along(), run)) {
      double elevation = lowest.get().elevation();
      run.standsIn().ifPresent(place -> check(run.id(), "the run comes down to", elevation, place));
    }
  }

  private static boolean aPartSpeaksFor(double along, Run run) {
    return run.parts().stream()
        .filter(part -> ReferenceCheck.landingOf(part).isPresent())
        .anyMatch(part -> Math.abs(part.along() - along) <= CLOSE_BY);
  }

  private void checkPart(Part part, String place) {
    switch (part) {
      case Part.Joint joint -> check(joint.id(), "the joint lies", joint.elevation(), place);
      case Part.Device device -> check(device.id(), "the device lies", device.elevation(), place);
      case Part.Pump other -> {}
      case Part.Valve other -> {}
      case Part.FloatValve other -> {}
      case Part.CheckValve other -> {}
      case Part.SiphonBreak other -> {}
      case Part.Strainer other -> {}
      case Part.Restrictor other -> {}
    }
  }

  private void check(String id, String what, double elevation, String place) {
    double ground = drawing.bottomOf(place);
    if (exceeds(ground, elevation + FLOOR_BUILD_UP)) {
      findings.error(
          id,
          "standsIn",
          what
              + " "
              + length(ground - elevation)
              + " below '"
              + place
              + "', where its water is said to land",
          "water does not run uphill; name the basin or floor below the lowest place");
    }
  }

  /** What is drawn of the run outside vessels; what leads to drains and supplies is not. */
  private Stream<Run.Waypoint> outside(Run run) {
    return Stream.of(
            Stream.of(new Run.Waypoint(outside(run.from()), 0)),
            run.waypoints().stream(),
            Stream.of(new Run.Waypoint(outside(run.to()), run.length())))
        .flatMap(points -> points)
        .filter(point -> Double.isFinite(point.elevation()));
  }

  /** A free end in a vessel leaves it over the rim; one that hangs above it has only its mouth. */
  private double overTheRim(RunEnd.Opening opening) {
    double rim = drawing.rimOf(opening.at());
    return opening.elevation() < rim ? rim : Double.NaN;
  }

  private double outside(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening ->
          switch (opening.kind()) {
            case PORT -> opening.elevation();
            case STANDPIPE -> drawing.bottomOf(opening.at());
            case FREE -> overTheRim(opening);
          };
      case RunEnd.AtJunction junction -> drawing.elevationOf(junction);
      case RunEnd.AtSupply supply -> Double.NaN;
      case RunEnd.AtDrain drain -> Double.NaN;
    };
  }
}
