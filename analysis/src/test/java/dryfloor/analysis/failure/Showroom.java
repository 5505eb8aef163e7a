package dryfloor.analysis.failure;

import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.FailureSettings.HandTopUp;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Control.LevelSwitch.Action;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Vessel.Role;
import dryfloor.model.element.Weir;
import dryfloor.model.shape.Shape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An invented display on the upper storey over a sump in a tray below, small but with one of
 * everything that can fail.
 */
final class Showroom {

  static final List<Storey> STOREYS =
      List.of(new Storey("ground", "Ground floor", 0, 3), new Storey("upper", "Upper floor", 3, 3));

  static final List<Floor> FLOORS =
      List.of(
          new Floor("plant-room", "Plant room", "ground", 0, 20, 0.02, 0.9, Optional.empty()),
          new Floor("hall", "Hall", "upper", 3, 40, 0.01, 2, Optional.of("plant-room")));

  static final List<Vessel> VESSELS =
      List.of(
          vessel("display", "Display", Role.DISPLAY, 0.7, 3.8, 4.43, "hall"),
          vessel("overflow-box", "Overflow box", Role.OVERFLOW_BOX, 0.65, 3.85, 4.32, "display"),
          vessel("sump", "Sump", Role.SUMP, 0.5, 0.2, 0.5, "plant-tray"),
          vessel("pump-chamber", "Pump chamber", Role.SUMP, 0.5, 0.2, 0.45, "plant-tray"),
          vessel("reservoir", "Reservoir", Role.RESERVOIR, 0.8, 0.3, 0.9, "plant-tray"),
          vessel("plant-tray", "Plant tray", Role.BASIN, 0.12, 0.0, 0.0, "plant-room"));

  static final List<Weir> WEIRS =
      List.of(
          new Weir("teeth", "Overflow teeth", Weir.Kind.TEETH, "display", "overflow-box", 4.42, 1),
          new Weir("high-lip", "High lip", Weir.Kind.LIP, "display", "overflow-box", 4.45, 1),
          new Weir("baffle", "Baffle", Weir.Kind.BAFFLE, "sump", "pump-chamber", 0.49, 0.5));

  static final List<Circuit> CIRCUITS =
      List.of(new Circuit("main", "Main circuit", 0), new Circuit("life", "Life support", 600));

  static final List<Control> CONTROLS =
      List.of(
          new Control.LevelSwitch(
              "top-off-switch",
              "top-off switch",
              "pump-chamber",
              0.44,
              0.45,
              Action.FILLS,
              List.of("top-off-pump")),
          new Control.LevelSwitch(
              "high-switch",
              "High-water switch",
              "sump",
              0.6,
              0.65,
              Action.STOPS_WHEN_HIGH,
              List.of("return-pump")),
          new Control.LeakSensor(
              "leak-sensor", "Leak sensor", "plant-tray", 0.005, 10, List.of("fill-valve")),
          new Control.Timer("top-off-timer", "Top-off timer", 900, List.of("top-off-pump")),
          new Control.HandSwitch("feed-switch", "Feeding switch", true, List.of("return-pump")),
          new Control.HandSwitch("mix-switch", "Mixing switch", false, List.of("skimmer-pump")));

  static final FailureSettings SETTINGS =
      new FailureSettings(
          List.of(),
          List.of(new HandTopUp("sump", 0.03)),
          List.of(
              new Sequence(
                  "cut-twice",
                  "cut twice in a day",
                  List.of(
                      new Sequence.Event.Begins(0, "power-lost.building"),
                      new Sequence.Event.Ends(3600, "power-lost.building"),
                      new Sequence.Event.Begins(7200, "power-lost.building")))),
          2e-6,
          1200,
          1.5);

  private Showroom() {}

  static Installation installation() {
    return with(STOREYS, FLOORS, VESSELS, WEIRS, ShowroomRuns.ALL, CIRCUITS, CONTROLS, SETTINGS);
  }

  static Installation withRuns(List<Run> runs) {
    return with(STOREYS, FLOORS, VESSELS, WEIRS, runs, CIRCUITS, List.of(), FailureSettings.USUAL);
  }

  static Installation withCircuits(List<Circuit> circuits) {
    return with(STOREYS, FLOORS, VESSELS, WEIRS, ShowroomRuns.ALL, circuits, CONTROLS, SETTINGS);
  }

  static Installation withSettings(FailureSettings settings) {
    return with(STOREYS, FLOORS, VESSELS, WEIRS, ShowroomRuns.ALL, CIRCUITS, CONTROLS, settings);
  }

  /** The same drawing, its file written from back to front. */
  static Installation backToFront() {
    return with(
        STOREYS.reversed(),
        FLOORS.reversed(),
        VESSELS.reversed(),
        WEIRS.reversed(),
        ShowroomRuns.ALL.reversed(),
        CIRCUITS.reversed(),
        CONTROLS.reversed(),
        SETTINGS);
  }

  private static Installation with(
      List<Storey> storeys,
      List<Floor> floors,
      List<Vessel> vessels,
      List<Weir> weirs,
      List<Run> runs,
      List<Circuit> circuits,
      List<Control> controls,
      FailureSettings settings) {
    return new Installation(
        "Showroom",
        Conditions.USUAL,
        storeys,
        floors,
        vessels,
        weirs,
        List.of(new Junction("fill-tee", "Fill tee", 1.5)),
        List.of(
            new Supply(
                "mains",
                "Mains water",
                Supply.Kind.MAINS,
                1.5,
                OptionalDouble.of(4e5),
                OptionalDouble.empty(),
                0,
                Supply.Protection.BACKFLOW_PREVENTER)),
        List.of(new Drain("house-drain", "House drain", -0.2, OptionalDouble.empty())),
        runs,
        List.of(
            new CirculationPump(
                "stream-pump", "Stream pump", "display", 4.2, 1e-3, ShowroomRuns.MAINS_POWER)),
        circuits,
        controls,
        settings);
  }

  private static Vessel vessel(
      String id, String name, Role role, double height, double bottom, double level, String in) {
    Shape shape = new Shape.Box(1.5, 0.6, height);
    return new Vessel(
        id,
        name,
        role,
        shape,
        bottom,
        level,
        List.of(),
        35,
        shape.rimLength(),
        in,
        OptionalDouble.empty());
  }
}
