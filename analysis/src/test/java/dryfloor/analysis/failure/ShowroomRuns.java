package dryfloor.analysis.failure;

import dryfloor.model.element.Run;
import dryfloor.model.element.Run.Duty;
import dryfloor.model.element.Run.Waypoint;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening;
import dryfloor.model.element.RunEnd.Opening.Kind;
import dryfloor.model.part.Part;
import dryfloor.model.part.Part.Pump.CurvePoint;
import dryfloor.model.part.Part.Valve.Drive;
import dryfloor.model.part.Part.Valve.Rest;
import dryfloor.model.part.Part.Valve.Use;
import dryfloor.model.part.Power;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The runs of the showroom. */
final class ShowroomRuns {

  static final Power MAINS_POWER = new Power("main", Power.OnReturn.RESTARTS, 0);

  private static final Run RETURN_LINE =
      run(
          "return-line",
          "Return line",
          new Opening("pump-chamber", 0.25, Kind.PORT),
          new Opening("display", 4.3, Kind.PORT),
          Duty.FEED,
          List.of(new Waypoint(0.15, 0.5), new Waypoint(4.6, 5.5)),
          List.of(
              pump("return-pump", "Return pump", 0.5, Optional.of("plant-tray")),
              new Part.CheckValve("check-valve", "Return check valve", 0.8, 0.1, 2),
              valve("return-valve", "Return valve", 1, 0.8, new Drive.Hand(Use.ISOLATE)),
              device("chiller", "Chiller", Part.Device.Kind.CHILLER, 1.5, 0.9, false),
              joint("chiller-union", "Chiller union", 2, 1.0, Optional.of("plant-room")),
              new Part.SiphonBreak(
                  "siphon-break", "Siphon break", 5.8, 4.41, 0.006, 2, Optional.of("display"))));

  private static final Run DRAIN_LINE =
      run(
          "drain-line",
          "Main drain",
          new Opening("overflow-box", 4.3, Kind.STANDPIPE),
          new Opening("sump", 0.45, Kind.FREE),
          Duty.DRAIN,
          List.of(new Waypoint(3.5, 1)),
          List.of(new Part.Strainer("basket", "Drain basket", 0, 0.5)));

  private static final Run EMERGENCY_DRAIN =
      run(
          "emergency-drain",
          "Emergency drain",
          new Opening("overflow-box", 4.4, Kind.STANDPIPE),
          new Opening("sump", 0.65, Kind.FREE),
          Duty.EMERGENCY,
          List.of(),
          List.of(joint("emergency-joint", "Emergency joint", 3, 1.5, Optional.empty())));

  private static final Run SKIMMER_LINE =
      run(
          "skimmer-line",
          "Skimmer line",
          new Opening("sump", 0.3, Kind.FREE),
          new Opening("sump", 0.62, Kind.FREE),
          Duty.FEED,
          List.of(),
          List.of(
              pump("skimmer-pump", "Skimmer pump", 0, Optional.empty()),
              device("skimmer", "Skimmer", Part.Device.Kind.SKIMMER, 0.5, 0.65, true)));

  private static final Run TOP_OFF_LINE =
      run(
          "top-off-line",
          "Top-off line",
          new Opening("reservoir", 0.32, Kind.FREE),
          new Opening("pump-chamber", 0.75, Kind.FREE),
          Duty.FEED,
          List.of(new Waypoint(1.2, 1)),
          List.of(
              pump("top-off-pump", "Top-off pump", 0.05, Optional.of("reservoir")),
              valve("top-off-trim", "Top-off trim valve", 1.5, 0.4, new Drive.Hand(Use.TRIM))));

  private static final Run FILL_LINE =
      run(
          "fill-line",
          "Fill line",
          new RunEnd.AtSupply("mains"),
          new RunEnd.AtJunction("fill-tee"),
          Duty.FEED,
          List.of(),
          List.of(device("purifier", "Purifier", Part.Device.Kind.PURIFIER, 1, 1.2, false)));

  private static final Run FILL_BRANCH =
      run(
          "fill-branch",
          "Fill branch",
          new RunEnd.AtJunction("fill-tee"),
          new Opening("reservoir", 1.15, Kind.FREE),
          Duty.FEED,
          List.of(),
          List.of(
              valve(
                  "fill-valve",
                  "Shut-off valve",
                  0.5,
                  1,
                  new Drive.Powered(MAINS_POWER, Rest.CLOSED)),
              new Part.FloatValve(
                  "reservoir-float",
                  "Float valve of the reservoir",
                  5.9,
                  0.5,
                  "reservoir",
                  0.9,
                  0.05)));

  private static final Run BYPASS =
      run(
          "hand-fill-line",
          "Hand fill line",
          new RunEnd.AtJunction("fill-tee"),
          new Opening("sump", 0.8, Kind.FREE),
          Duty.FEED,
          List.of(),
          List.of(valve("fill-tap", "Fill tap", 0.5, 0, new Drive.Hand(Use.FILL))));

  private static final Run TRAY_DRAIN =
      run(
          "tray-drain",
          "Tray drain",
          new Opening("plant-tray", 0, Kind.PORT),
          new RunEnd.AtDrain("house-drain"),
          Duty.DRAIN,
          List.of(),
          List.of());

  static final List<Run> ALL =
      List.of(
          RETURN_LINE,
          DRAIN_LINE,
          EMERGENCY_DRAIN,
          SKIMMER_LINE,
          TOP_OFF_LINE,
          FILL_LINE,
          FILL_BRANCH,
          BYPASS,
          TRAY_DRAIN);

  private ShowroomRuns() {}

  /** A run of 6 m in 32 mm pipe that is not said to stand in anything. */
  static Run run(
      String id,
      String name,
      RunEnd from,
      RunEnd to,
      Duty duty,
      List<Waypoint> waypoints,
      List<Part> parts) {
    return new Run(
        id,
        name,
        from,
        to,
        duty,
        0.032,
        6,
        1.5e-6,
        List.of(),
        0,
        waypoints,
        parts,
        false,
        Optional.empty());
  }

  static Part.Joint joint(
      String id, String name, double along, double elevation, Optional<String> standsIn) {
    return new Part.Joint(id, name, along, elevation, Part.Joint.Kind.UNION, standsIn);
  }

  private static Part.Pump pump(String id, String name, double along, Optional<String> standsIn) {
    List<CurvePoint> curve = List.of(new CurvePoint(0, 7), new CurvePoint(2e-3, 0));
    return new Part.Pump(
        id, name, along, curve, 1, Part.Pump.Kind.CENTRIFUGAL, MAINS_POWER, 5, true, standsIn);
  }

  private static Part.Valve valve(
      String id, String name, double along, double opening, Drive drive) {
    return new Part.Valve(id, name, along, 20, opening, drive);
  }

  private static Part.Device device(
      String id, String name, Part.Device.Kind kind, double along, double at, boolean hasCup) {
    OptionalDouble cup = hasCup ? OptionalDouble.of(1e-5) : OptionalDouble.empty();
    return new Part.Device(id, name, along, kind, at, 2, 0, cup, Optional.empty());
  }
}
