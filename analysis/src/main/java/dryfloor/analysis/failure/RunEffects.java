package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Drawing.Fitted;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What failures of runs and of what sits in them change. */
final class RunEffects {

  /**
   * How much deeper an outlet can sink (m). Common practice: it slips by a hand's breadth or two.
   */
  static final double SINKS_BY = 0.15;

  /**
   * A run parts or leaks at least this far from its ends (m), a tenth of a shorter one. Which parts
   * lie before the cut and which beyond does not depend on it where a part gives way.
   */
  private static final double FROM_THE_END = 0.02;

  /** What stands this close along the run (m) stands over the same ground. Common practice. */
  private static final double CLOSE_BY = 0.25;

  private final Drawing drawing;
  private final Landing landing;

  RunEffects(Drawing drawing) {
    this.drawing = drawing;
    this.landing = new Landing(drawing);
  }

  List<Effect> parts(String joint) {
    Fitted<Part.Joint> fitted = drawing.part(Part.Joint.class, joint);
    Part.Joint parted = fitted.part();
    return parts(
        parted.standsIn(), fitted.run(), before(fitted), parted.along(), parted.elevation());
  }

  List<Effect> partsAtLowestPoint(String run) {
    RunProfile.Point low = lowestPoint(run);
    Run parted = drawing.run(run);
    return parts(
        saidNear(parted, low.along()), parted, OptionalInt.empty(), low.along(), low.elevation());
  }

  List<Effect> connectionLetsGo(String device) {
    Fitted<Part.Device> fitted = drawing.part(Part.Device.class, device);
    Part.Device loose = fitted.part();
    double elevation = connection(loose, fitted.run());
    return parts(loose.standsIn(), fitted.run(), before(fitted), loose.along(), elevation);
  }

  List<Effect> drips(String joint) {
    Fitted<Part.Joint> fitted = drawing.part(Part.Joint.class, joint);
    Part.Joint loose = fitted.part();
    return drips(loose.standsIn(), fitted.run(), before(fitted), loose.along(), loose.elevation());
  }

  List<Effect> dripsAtLowestPoint(String run) {
    RunProfile.Point low = lowestPoint(run);
    Run cracked = drawing.run(run);
    return drips(
        saidNear(cracked, low.along()), cracked, OptionalInt.empty(), low.along(), low.elevation());
  }

  /** A shaft's seal lies between suction and delivery; taken with the pressure of the delivery. */
  List<Effect> sealLeaks(String pump) {
    Fitted<Part.Pump> fitted = drawing.part(Part.Pump.class, pump);
    double along = fitted.part().along();
    double elevation = new RunProfile(drawing, fitted.run()).elevationAt(along);
    return drips(
        fitted.part().standsIn(),
        fitted.run(),
        OptionalInt.of(index(fitted) + 1),
        along,
        elevation);
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
            before(fitted),
            run.boreArea(),
            true,
            landing.from(open.standsIn(), run, open.along(), open.elevation())));
  }

  /**
   * What the pump that feeds a device throws over its cup; nothing if no pump feeds it from a
   * vessel.
   */
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
            landing.from(cup.standsIn(), run, cup.along(), cup.elevation())));
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

  private List<Effect> parts(
      Optional<String> said, Run run, OptionalInt partsBefore, double along, double elevation) {
    return List.of(
        new Effect.RunParted(
            run.id(),
            offTheEnds(run, along),
            elevation,
            partsBefore,
            landing.from(said, run, along, elevation)));
  }

  private List<Effect> drips(
      Optional<String> said, Run run, OptionalInt partsBefore, double along, double elevation) {
    return List.of(
        new Effect.RunLeaks(
            run.id(),
            offTheEnds(run, along),
            elevation,
            partsBefore,
            drawing.installation().failureSettings().dripArea(),
            false,
            landing.from(said, run, along, elevation)));
  }

  /** What gives way leaks before what it resists: all listed ahead of it lies before the cut. */
  private static OptionalInt before(Fitted<? extends Part> fitted) {
    return OptionalInt.of(index(fitted));
  }

  private static int index(Fitted<? extends Part> fitted) {
    return fitted.run().parts().stream()
        .sorted(Comparator.comparingDouble(Part::along))
        .toList()
        .indexOf(fitted.part());
  }

  private RunProfile.Point lowestPoint(String run) {
    return new RunProfile(drawing, drawing.run(run))
        .lowestOutside()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "run \"" + run + "\" stays inside its vessels and can't come apart outside"));
  }

  /** What the nearest joint, pump or device close by is said to stand in. */
  private static Optional<String> saidNear(Run run, double along) {
    return run.parts().stream()
        .filter(part -> Math.abs(part.along() - along) <= CLOSE_BY)
        .filter(part -> standsIn(part).isPresent())
        .min(Comparator.comparingDouble(part -> Math.abs(part.along() - along)))
        .flatMap(RunEffects::standsIn);
  }

  private static Optional<String> standsIn(Part part) {
    return switch (part) {
      case Part.Pump pump -> pump.standsIn();
      case Part.Joint joint -> joint.standsIn();
      case Part.Device device -> device.standsIn();
      case Part.Valve valve -> Optional.empty();
      case Part.FloatValve valve -> Optional.empty();
      case Part.CheckValve valve -> Optional.empty();
      case Part.SiphonBreak siphonBreak -> Optional.empty();
      case Part.Strainer strainer -> Optional.empty();
      case Part.Restrictor restrictor -> Optional.empty();
    };
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
