package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Drawing.Fitted;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;

/** What failures of runs and of what sits in them change. */
final class RunEffects {

  /**
   * How much deeper an outlet can sink (m). Common practice: it slips by a hand's breadth or two.
   */
  static final double SINKS_BY = 0.15;

  /** A run parts or leaks at least this far from its ends (m), a tenth of a shorter one. */
  private static final double FROM_THE_END = 0.02;

  private final Drawing drawing;
  private final Landing landing;

  RunEffects(Drawing drawing) {
    this.drawing = drawing;
    this.landing = new Landing(drawing);
  }

  List<Effect> parts(String joint) {
    Fitted<Part.Joint> fitted = drawing.part(Part.Joint.class, joint);
    return parts(fitted.run(), fitted.part().along(), fitted.part().elevation());
  }

  List<Effect> partsAtLowestPoint(String run) {
    RunProfile.Point low = lowestPoint(run);
    return parts(drawing.run(run), low.along(), low.elevation());
  }

  List<Effect> partsAt(Part.Device device, Run run) {
    return parts(run, device.along(), connection(device, run));
  }

  List<Effect> drips(String joint) {
    Fitted<Part.Joint> fitted = drawing.part(Part.Joint.class, joint);
    return drips(fitted.run(), fitted.part().along(), fitted.part().elevation());
  }

  List<Effect> dripsAtLowestPoint(String run) {
    RunProfile.Point low = lowestPoint(run);
    return drips(drawing.run(run), low.along(), low.elevation());
  }

  List<Effect> sealLeaks(String pump) {
    Fitted<Part.Pump> fitted = drawing.part(Part.Pump.class, pump);
    double along = fitted.part().along();
    return drips(fitted.run(), along, new RunProfile(drawing, fitted.run()).elevationAt(along));
  }

  /** The whole bore pours out of the lid, and nothing goes on through the blocked outlet. */
  List<Effect> lidOpens(String device) {
    Fitted<Part.Device> fitted = drawing.part(Part.Device.class, device);
    Run run = fitted.run();
    Part.Device open = fitted.part();
    return List.of(
        new Effect.RunLeaks(
            run.id(),
            offTheEnds(run, open.along()),
            open.elevation(),
            run.boreArea(),
            true,
            landing.from(run, open.along(), open.elevation())));
  }

  /** The pump that feeds a device and the vessel it draws from, if a pump does. */
  Optional<Effect> cupOverflows(String device) {
    Fitted<Part.Device> fitted = drawing.part(Part.Device.class, device);
    Run run = fitted.run();
    Part.Device cup = fitted.part();
    List<Run> feeding = new Downstream(drawing).upstreamOf(run);
    Optional<Part.Pump> pump =
        feeding.stream()
            .flatMap(feed -> feed.parts().stream())
            .filter(Part.Pump.class::isInstance)
            .map(Part.Pump.class::cast)
            .findFirst();
    Optional<RunEnd.Opening> intake =
        feeding.stream()
            .map(Run::from)
            .filter(RunEnd.Opening.class::isInstance)
            .map(RunEnd.Opening.class::cast)
            .filter(opening -> drawing.isVessel(opening.at()))
            .findFirst();
    if (pump.isEmpty() || intake.isEmpty() || cup.cupOverflow().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Effect.Thrown(
            intake.get().at(),
            intake.get().elevation(),
            cup.cupOverflow().getAsDouble(),
            pump.get().id(),
            landing.from(run, cup.along(), cup.elevation())));
  }

  /** The free end lies on the ground on which its vessel stands. */
  List<Effect> slipsOut(String run, Failure.End end) {
    Vessel vessel = drawing.vessel(opening(run, end).at());
    return List.of(
        new Effect.EndMoved(run, end, vessel.standsIn(), drawing.bottomOf(vessel.standsIn())));
  }

  List<Effect> sinks(String run, Failure.End end) {
    RunEnd.Opening opening = opening(run, end);
    double lowest = drawing.vessel(opening.at()).bottom();
    return List.of(
        new Effect.EndMoved(
            run, end, opening.at(), Math.max(lowest, opening.elevation() - SINKS_BY)));
  }

  /** The opening at an end of a run. */
  RunEnd.Opening opening(String run, Failure.End end) {
    Run found = drawing.run(run);
    RunEnd runEnd =
        switch (end) {
          case FIRST -> found.from();
          case SECOND -> found.to();
        };
    if (runEnd instanceof RunEnd.Opening opening) {
      return opening;
    }
    throw new IllegalArgumentException(
        "run \"" + run + "\" has no opening at its " + end + " end, so that end can't move");
  }

  private List<Effect> parts(Run run, double along, double elevation) {
    return List.of(
        new Effect.RunParted(
            run.id(), offTheEnds(run, along), elevation, landing.from(run, along, elevation)));
  }

  private List<Effect> drips(Run run, double along, double elevation) {
    return List.of(
        new Effect.RunLeaks(
            run.id(),
            offTheEnds(run, along),
            elevation,
            drawing.installation().failureSettings().dripArea(),
            false,
            landing.from(run, along, elevation)));
  }

  private RunProfile.Point lowestPoint(String run) {
    return new RunProfile(drawing, drawing.run(run))
        .lowestOutside()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "run \"" + run + "\" stays inside its vessels and can't come apart outside"));
  }

  /** Devices hang on the run or stand below it; their connections are never above their lid. */
  private double connection(Part.Device device, Run run) {
    return Math.min(device.elevation(), new RunProfile(drawing, run).elevationAt(device.along()));
  }

  private static double offTheEnds(Run run, double along) {
    double margin = Math.min(FROM_THE_END, run.length() / 10);
    return Math.clamp(along, margin, run.length() - margin);
  }
}
