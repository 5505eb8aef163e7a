package dryfloor.analysis.failure;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Places where runs come apart or drip, and ends that move.
 *
 * <p>A run that is dry in normal operation parts at the joints that are drawn, where it is a hidden
 * failure; it does not drip, and has no water to lose at its lowest point.
 */
final class RunFailures {

  private final Drawing drawing;

  RunFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> all() {
    return Drawing.byId(drawing.installation().runs()).flatMap(this::of);
  }

  private Stream<Failure> of(Run run) {
    Stream.Builder<Failure> failures = Stream.builder();
    boolean carriesWater = !drawing.isDormant(run);
    run.parts().stream()
        .filter(Part.Joint.class::isInstance)
        .map(Part::id)
        .sorted(Comparator.naturalOrder())
        .forEach(
            joint -> {
              failures.add(new Failure.JointParts(run.id(), joint));
              if (carriesWater) {
                failures.add(new Failure.JointDrips(run.id(), joint));
              }
            });
    if (carriesWater && lowestPointWithoutJoint(run).isPresent()) {
      failures.add(new Failure.RunPartsAtLowestPoint(run.id()));
      failures.add(new Failure.RunDripsAtLowestPoint(run.id()));
    }
    if (slipsOut(run.from())) {
      failures.add(new Failure.EndSlipsOut(run.id(), Failure.End.FIRST));
    }
    if (slipsOut(run.to())) {
      failures.add(new Failure.EndSlipsOut(run.id(), Failure.End.SECOND));
    }
    if (sinks(run.to())) {
      failures.add(new Failure.OutletSinks(run.id(), Failure.End.SECOND));
    }
    return failures.build();
  }

  private Optional<RunProfile.Point> lowestPointWithoutJoint(Run run) {
    RunProfile profile = new RunProfile(drawing, run);
    return profile.lowestOutside().filter(low -> !profile.hasJointAt(low));
  }

  private boolean slipsOut(RunEnd end) {
    return end instanceof Opening opening
        && opening.kind() == Opening.Kind.FREE
        && drawing.isVessel(opening.at());
  }

  /** An outlet that would be under water if it sank, and that is not at the bottom yet. */
  private boolean sinks(RunEnd end) {
    if (!(end instanceof Opening opening) || !drawing.isVessel(opening.at())) {
      return false;
    }
    Vessel vessel = drawing.vessel(opening.at());
    boolean movable =
        switch (opening.kind()) {
          case FREE -> true;
          case PORT -> true;
          case STANDPIPE -> false;
        };
    return movable
        && vessel.level() > vessel.bottom()
        && opening.elevation() > vessel.bottom()
        && opening.elevation() - RunEffects.SINKS_BY < vessel.level();
  }
}
