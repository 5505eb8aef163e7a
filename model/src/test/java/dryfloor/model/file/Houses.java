package dryfloor.model.file;

import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.Control;
import dryfloor.model.element.Fitting;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * Sound installations by chance: so many tanks in a row on the upper storey, each draining into a
 * sump below and fed from it by a pump of its own, all measures drawn at random.
 */
final class Houses {

  private final Random random;
  private final List<Vessel> vessels = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Control> controls = new ArrayList<>();

  private Houses(long seed) {
    random = new Random(seed);
  }

  static Arbitrary<Installation> any() {
    return Arbitraries.longs().map(seed -> new Houses(seed).build());
  }

  private double between(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  private Installation build() {
    double down = -between(2.2, 5);
    Storey cellar = new Storey("cellar", "Cellar", down, between(2, -down));
    Storey ground = new Storey("ground", "Ground", between(-0.1, 0.1), between(2.2, 4));
    Floor plant =
        new Floor(
            "plant",
            "Plant room",
            "cellar",
            down + (random.nextBoolean() ? 0.1 + 0.2 - 0.3 : between(0, 0.05)),
            between(4, 40),
            between(0, 0.1),
            between(0.6, 2),
            Optional.empty());
    Floor hall =
        new Floor(
            "hall",
            "Hall",
            "ground",
            ground.elevation(),
            between(4, 90),
            between(0, 0.02),
            between(0.6, 2),
            random.nextBoolean() ? Optional.of("plant") : Optional.empty());
    int pairs = 1 + random.nextInt(4);
    for (int i = 0; i < pairs; i++) {
      addPair(i, hall, plant);
    }
    return new Installation(
        "House " + random.nextInt(1000) + " \"quoted\" \\ ü",
        new Conditions(between(10, 30), between(1, 200) * 3600),
        List.of(cellar, ground),
        List.of(plant, hall),
        vessels,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        runs,
        List.of(),
        List.of(new Circuit("mains", "Mains", between(0, 7200))),
        controls,
        new FailureSettings(
            List.of(),
            List.of(new FailureSettings.HandTopUp("sump-0", between(0.001, 0.1))),
            List.of(sequence()),
            between(1e-7, 1e-5),
            between(1, 1e5),
            between(1, 3)));
  }

  private Sequence sequence() {
    double first = between(0, 1e5);
    double second = first + between(0, 1e5);
    return new Sequence(
        "outage",
        "Outage \"quoted\"",
        List.of(
            new Sequence.Event.Begins(first, "power-lost.building"),
            new Sequence.Event.Takes(first, "sump-0", between(0.001, 0.1), between(0, 0.1)),
            new Sequence.Event.Pours(first, "sump-0", between(0.001, 0.1), between(0, 40)),
            new Sequence.Event.Ends(second, "power-lost.building")));
  }

  private void addPair(int i, Floor hall, Floor plant) {
    Vessel tank = vessel("tank-" + i, Vessel.Role.DISPLAY, hall, between(0.5, 1));
    Vessel sump = vessel("sump-" + i, Vessel.Role.SUMP, plant, between(0, 0.3));
    vessels.add(tank);
    vessels.add(sump);
    RunEnd lip = opening(tank, between(0.5, 0.9), RunEnd.Opening.Kind.STANDPIPE);
    RunEnd outlet = opening(sump, between(0.1, 1.2), RunEnd.Opening.Kind.FREE);
    runs.add(run("drain-" + i, lip, outlet, Run.Duty.DRAIN, List.of(), List.of()));
    RunEnd suction = opening(sump, between(0.01, 0.3), RunEnd.Opening.Kind.PORT);
    RunEnd nozzle = opening(tank, between(0.8, 1.1), RunEnd.Opening.Kind.FREE);
    double length = between(20, 30);
    Run.Waypoint crest = new Run.Waypoint(tank.rim() + between(0, 0.2), length * 0.6);
    runs.add(
        new Run(
            "return-" + i,
            "Return " + i,
            suction,
            nozzle,
            Run.Duty.FEED,
            between(0.01, 0.1),
            length,
            between(1e-6, 1e-4),
            List.of(new Run.FittingCount(Fitting.ELBOW_90, 4)),
            between(0, 5),
            List.of(crest),
            parts(i, tank, length),
            random.nextBoolean(),
            Optional.of("plant")));
    controls.add(
        new Control.LevelSwitch(
            "switch-" + i,
            "Switch",
            sump.id(),
            sump.bottom() + 0.01,
            sump.bottom() + 0.05,
            action(),
            List.of("pump-" + i)));
  }

  private List<Part> parts(int i, Vessel tank, double length) {
    double head = between(5, 12);
    Part.Pump pump =
        new Part.Pump(
            "pump-" + i,
            "Pump",
            between(0, 1),
            List.of(
                new Part.Pump.CurvePoint(0, head),
                new Part.Pump.CurvePoint(between(1e-4, 1e-3), head * between(0.4, 0.9)),
                new Part.Pump.CurvePoint(between(2e-3, 1e-2), 0)),
            between(0.3, 1.2),
            Part.Pump.Kind.CENTRIFUGAL,
            new Power("mains", Power.OnReturn.RESTARTS, between(0, 60)),
            between(0, 9),
            random.nextBoolean(),
            Optional.empty());
    Part.Valve valve =
        new Part.Valve(
            "valve-" + i,
            "Valve",
            between(1, 2),
            between(1, 90),
            between(0, 1),
            new Part.Valve.Drive.Hand(Part.Valve.Use.TRIM));
    Part.SiphonBreak hole =
        new Part.SiphonBreak(
            "break-" + i,
            "Break",
            length * 0.9,
            tank.bottom() + between(0.6, 0.95) * tank.shape().height(),
            between(0.002, 0.009),
            1 + random.nextInt(3),
            Optional.of(tank.id()));
    return List.of(pump, valve, hole);
  }

  private Run run(
      String id,
      RunEnd from,
      RunEnd to,
      Run.Duty duty,
      List<Run.Waypoint> points,
      List<Part> parts) {
    return new Run(
        id,
        id,
        from,
        to,
        duty,
        between(0.02, 0.1),
        between(20, 30),
        between(1e-6, 1e-5),
        List.of(),
        0,
        points,
        parts,
        false,
        Optional.of("plant"));
  }

  private static RunEnd opening(Vessel vessel, double part, RunEnd.Opening.Kind kind) {
    return new RunEnd.Opening(vessel.id(), vessel.bottom() + part * vessel.shape().height(), kind);
  }

  private Vessel vessel(String id, Vessel.Role role, Floor floor, double raised) {
    Shape shape = shape();
    double bottom = floor.elevation() + raised;
    return new Vessel(
        id,
        "The " + id,
        role,
        shape,
        bottom,
        bottom + depth() * shape.height(),
        List.of(
            new Vessel.Displacement(0, shape.height() / 2, shape.capacity() * between(0.01, 0.2))),
        between(0, 40),
        shape.rimLength() * between(0.2, 1),
        floor.id(),
        random.nextBoolean() ? OptionalDouble.of(between(1, 500)) : OptionalDouble.empty());
  }

  /** Dry, or deeper than the least length that a file can say. */
  private double depth() {
    return random.nextInt(6) == 0 ? 0 : between(1e-3, 1);
  }

  private Control.LevelSwitch.Action action() {
    List<Control.LevelSwitch.Action> actions = List.of(Control.LevelSwitch.Action.values());
    return actions.get(random.nextInt(actions.size()));
  }

  private Shape shape() {
    double height = between(0.3, 1.2);
    return switch (random.nextInt(5)) {
      case 0 -> new Shape.Box(between(0.3, 4), between(0.3, 2), height);
      case 1 -> new Shape.Cylinder(between(0.3, 2), height);
      case 2 -> new Shape.Frustum(between(0.8, 1), between(0.8, 1.2), height);
      case 3 -> new Shape.Prism(between(0.2, 5), between(2, 9), height);
      default ->
          new Shape.Measured(
              List.of(
                  new Shape.Measured.Point(0, 0),
                  new Shape.Measured.Point(height / 2, between(0.2, 0.25)),
                  new Shape.Measured.Point(height, between(0.45, 0.5))),
              between(2, 9));
    };
  }
}
