package dryfloor.model.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Drawings built in code, each sound but for one thing: two tubs on one floor, 1 m and 0.5 m up.
 */
class DrawingCheckTest {

  private final List<Floor> floors = new ArrayList<>();
  private final List<Vessel> vessels = new ArrayList<>();
  private final List<Weir> weirs = new ArrayList<>();
  private final List<Junction> junctions = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();
  private final List<Drain> drains = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Circuit> circuits = new ArrayList<>();
  private final List<Control> controls = new ArrayList<>();

  DrawingCheckTest() {
    floors.add(new Floor("floor", "Floor", "ground", 0, 20, 0.01, 1, Optional.empty()));
    vessels.add(tub("upper", "floor", 1));
    vessels.add(tub("lower", "floor", 0.5));
  }

  @Test
  void aSoundDrawingRaisesNothing() {
    runs.add(run("pipe", opening("upper", 1.2), opening("lower", 0.9)));
    assertThat(findings()).isEmpty();
  }

  @Test
  void anIdUsedTwiceIsFound() {
    vessels.add(tub("lower", "floor", 2));
    assertFound(Finding.Severity.ERROR, "lower", "id", "the id 'lower' is taken");
  }

  @Test
  void anIdThatMeansAHeightIsFound() {
    vessels.add(tub("lower.rim", "floor", 0));
    assertFound(Finding.Severity.ERROR, "lower.rim", "id", "would be taken for a height");
  }

  @Test
  void aVesselOfAFewDropsIsFound() {
    Vessel tub = vessels.getFirst();
    vessels.add(
        new Vessel(
            "third",
            "Third",
            tub.role(),
            new Shape.Cylinder(0.004, 0.7),
            0,
            0.5,
            List.of(),
            35,
            0.01,
            "floor",
            OptionalDouble.empty()));
    assertFound(Finding.Severity.ERROR, "third", "shape", "holds less than 10 mL");
  }

  @Test
  void aFloorSmallerThanAHandIsFound() {
    floors.add(new Floor("step", "Step", "ground", 0, 0.009, 0.01, 1, Optional.empty()));
    assertFound(Finding.Severity.ERROR, "step", "area", "smaller than a hand");
  }

  @Test
  void aVesselOnNothingIsFound() {
    vessels.add(tub("third", "cloud", 0));
    assertFound(
        Finding.Severity.ERROR, "third", "standsIn", "nothing is drawn with the id 'cloud'");
  }

  @Test
  void aVesselInItselfIsFound() {
    vessels.add(tub("third", "third", 0));
    assertFound(
        Finding.Severity.ERROR,
        "third",
        "standsIn",
        "the vessel stands in itself: third, then third");
  }

  @Test
  void nothingIsSaidAboutWhatCouldNotBeRead() {
    vessels.add(tub("third", "cloud", 0));
    assertThat(DrawingCheck.check(installation(), Set.of("cloud"))).isEmpty();
  }

  @Test
  void nothingIsSaidAboutAQuantityThatIsNotKnown() {
    vessels.add(tub("third", "floor", Double.NaN));
    runs.add(run("pipe", opening("upper", Double.NaN), opening("third", 0.9)));
    assertThat(findings()).isEmpty();
  }

  @Test
  void aFreeEndMayHangAboveTheRim() {
    runs.add(
        run(
            "pipe",
            opening("upper", 1.2),
            new RunEnd.Opening("lower", 1.3, RunEnd.Opening.Kind.FREE)));
    assertThat(findings()).isEmpty();
  }

  @Test
  void aStandpipeAboveTheRimIsFound() {
    runs.add(
        run(
            "pipe",
            new RunEnd.Opening("upper", 1.6, RunEnd.Opening.Kind.STANDPIPE),
            opening("lower", 0.9)));
    assertFound(
        Finding.Severity.ERROR,
        "pipe",
        "from.at",
        "the opening lies 100 mm above the rim of 'upper'");
  }

  @Test
  void aWeirBelowTheBottomOfTheHigherVesselIsFound() {
    weirs.add(new Weir("edge", "Edge", Weir.Kind.LIP, "upper", "lower", 0.95, 0.3));
    assertFound(
        Finding.Severity.ERROR,
        "edge",
        "crest",
        "the crest lies 50 mm below the bottom of 'upper'");
  }

  @Test
  void aWeirFromAVesselToItselfIsFound() {
    weirs.add(new Weir("edge", "Edge", Weir.Kind.LIP, "upper", "upper", 1.4, 0.3));
    assertFound(Finding.Severity.ERROR, "edge", "to", "from 'upper' to itself");
  }

  @Test
  void aWeirLongerThanOnceRoundItsVesselIsFound() {
    // Both tubs are 1 m by 0.5 m: 3 m round.
    vessels.set(1, tub("lower", "floor", 0.9));
    weirs.add(new Weir("edge", "Edge", Weir.Kind.LIP, "upper", "lower", 1.3, 3.1));
    assertFound(Finding.Severity.ERROR, "edge", "length", "longer than the rims of");
    weirs.set(0, new Weir("edge", "Edge", Weir.Kind.LIP, "upper", "lower", 1.3, 3));
    assertThat(findings()).isEmpty();
  }

  @Test
  void aVesselHigherThanAHouseIsFound() {
    Vessel tub = vessels.getFirst();
    vessels.set(0, tub.withShape(new Shape.Box(1, 0.5, 31)));
    assertFound(Finding.Severity.ERROR, "upper", "shape", "the vessel is 31");
  }

  @Test
  void aPipeWiderThanTheVesselItLeavesIsFound() {
    // 0.5 m² are a circle of 798 mm.
    runs.add(wide(0.8));
    assertThat(findings())
        .extracting(Finding::field, Finding::message)
        .containsExactly(
            tuple("from.at", "the pipe is wider than 'upper' is there"),
            tuple("to.at", "the pipe is wider than 'lower' is there"));
    runs.set(0, wide(0.79));
    assertThat(findings()).isEmpty();
  }

  private static Run wide(double bore) {
    return run("pipe", opening("upper", 1.2), opening("lower", 0.9)).withBore(bore);
  }

  @Test
  void aDrainBackIntoItsOwnVesselIsAWarning() {
    runs.add(run("drain", opening("upper", 1.2), opening("upper", 1.1)));
    assertFound(Finding.Severity.WARNING, "drain", "to", "back into it, and no pump drives it");
  }

  @Test
  void twoThingsOfOneNameAreAWarning() {
    floors.set(0, new Floor("floor", "upper", "ground", 0, 20, 0.01, 1, Optional.empty()));
    assertThat(findings())
        .extracting(Finding::severity, Finding::field)
        .containsExactly(tuple(Finding.Severity.WARNING, "name"));
  }

  @Test
  void aSupplyWithoutProtectionIsAWarningThatDefersToAPlumber() {
    supplies.add(supply(Supply.Protection.NONE));
    runs.add(run("fill", new RunEnd.AtSupply("mains"), opening("lower", 0.9)));
    assertFound(
        Finding.Severity.WARNING,
        "mains",
        "protection",
        "nothing keeps the installation's water out");
    assertThat(findings().getFirst().remedy()).contains("licensed plumber");
  }

  @Test
  void anAirGapThatEndsBelowTheRimIsAWarning() {
    supplies.add(supply(Supply.Protection.AIR_GAP));
    runs.add(run("fill", new RunEnd.AtSupply("mains"), opening("lower", 0.9)));
    assertFound(
        Finding.Severity.WARNING,
        "fill",
        "to.at",
        "has an air gap, but this end hangs below the rim");
  }

  @Test
  void aSupplyADrainAndACircuitWithoutUseAreWarnings() {
    supplies.add(supply(Supply.Protection.BACKFLOW_PREVENTER));
    drains.add(new Drain("gully", "Gully", 0, OptionalDouble.empty()));
    circuits.add(new Circuit("sockets", "Sockets", 0));
    assertThat(findings())
        .extracting(Finding::element, Finding::severity)
        .containsExactly(
            tuple("sockets", Finding.Severity.WARNING),
            tuple("mains", Finding.Severity.WARNING),
            tuple("gully", Finding.Severity.WARNING));
  }

  @Test
  void aRunThatDoesNotSayWhereItSpillsIsAWarning() {
    Run sound = run("pipe", opening("upper", 1.2), opening("lower", 0.9));
    runs.add(
        new Run(
            sound.id(),
            sound.name(),
            sound.from(),
            sound.to(),
            sound.duty(),
            sound.bore(),
            sound.length(),
            sound.roughness(),
            List.of(),
            0,
            List.of(),
            List.of(),
            false,
            Optional.empty()));
    assertFound(Finding.Severity.WARNING, "pipe", "standsIn", "does not say where it spills");
  }

  @Test
  void aSwitchThatDrivesAStrainerIsFound() {
    runs.add(
        run(
            "pipe",
            opening("upper", 1.2),
            opening("lower", 0.9),
            new Part.Strainer("basket", "Basket", 0, 1)));
    controls.add(new Control.HandSwitch("switch", "Switch", true, List.of("basket")));
    assertFound(
        Finding.Severity.ERROR,
        "switch",
        "drives[0]",
        "'basket' is not a pump, circulation pump or");
  }

  @Test
  void aSiphonBreakInTheOpenBelowTheWaterIsAWarning() {
    // The water of the upper tub stands at 1.4 m, that of the lower at 0.9 m; the crest at 1.6 m.
    runs.add(siphon(1.3));
    assertFound(
        Finding.Severity.WARNING,
        "hole",
        "at",
        "the siphon break lies 100 mm below the water of 'upper' and in the open air");
  }

  @Test
  void aSiphonBreakInTheOpenAboveTheWaterIsSound() {
    runs.add(siphon(1.45));
    assertThat(findings()).isEmpty();
  }

  private static Run siphon(double hole) {
    Part siphonBreak = new Part.SiphonBreak("hole", "hole", 0.5, hole, 0.006, 1, Optional.empty());
    return run(
        "pipe",
        opening("upper", 1.2),
        opening("lower", 0.7),
        List.of(new Run.Waypoint(1.6, 1)),
        siphonBreak);
  }

  @Test
  void aFloorThatWouldSpillUphillIsFound() {
    floors.add(new Floor("cellar", "Cellar", "ground", -2, 9, 0.02, 1, Optional.of("floor")));
    assertFound(
        Finding.Severity.ERROR, "cellar", "spillsTo", "'floor' lies 1980 mm above this sill");
  }

  @Test
  void roomsThatSpillIntoEachOtherAreFound() {
    floors.add(new Floor("east", "East", "ground", 0, 9, 0.02, 1, Optional.of("west")));
    floors.add(new Floor("west", "West", "ground", 0, 9, 0.02, 1, Optional.of("east")));
    assertThat(findings())
        .extracting(Finding::message)
        .containsExactly(
            "what spills from here comes back: east, then west, then east",
            "what spills from here comes back: west, then east, then west");
  }

  @Test
  void aVesselAboveTheCeilingOfItsStoreyIsFound() {
    vessels.add(tub("loft", "floor", 2.6));
    assertFound(
        Finding.Severity.ERROR,
        "loft",
        "raised",
        "its bottom lies 100 mm above the ceiling of 'ground'");
  }

  @Test
  void aVesselThatStandsInAVesselIsHeldToTheCeilingOfItsStoreyToo() {
    vessels.add(basin("tray"));
    vessels.add(tub("loft", "tray", 2.6));
    assertFound(Finding.Severity.ERROR, "loft", "raised", "above the ceiling of 'ground'");
  }

  @Test
  void aVesselThatHangsOverAnotherWithoutStandingIsAWarning() {
    vessels.add(tub("hanging", "lower", 1.2));
    assertFound(
        Finding.Severity.WARNING,
        "hanging",
        "standsIn",
        "its bottom hangs 200 mm above the rim of 'lower', which is no basin");
  }

  @Test
  void aVesselOnAStandOverABasinIsSound() {
    vessels.add(basin("tray"));
    vessels.add(tub("shelved", "tray", 1.2));
    assertThat(findings()).isEmpty();
  }

  @Test
  void aRunWhoseWaterWouldHaveToRunUphillIsFound() {
    floors.add(new Floor("gallery", "Gallery", "ground", 1.5, 9, 0.02, 1, Optional.of("floor")));
    runs.add(standing(run("pipe", opening("upper", 1.2), opening("lower", 0.9)), "gallery"));
    assertFound(
        Finding.Severity.ERROR,
        "pipe",
        "standsIn",
        "the run comes down to 600 mm below 'gallery', where its water is said to land");
  }

  @Test
  void aHoseFromAStandpipeDownToATubIsFollowedToTheRimThatItCrosses() {
    floors.add(new Floor("gallery", "Gallery", "ground", 1.6, 9, 0.02, 1, Optional.of("floor")));
    RunEnd lip = new RunEnd.Opening("upper", 1.3, RunEnd.Opening.Kind.STANDPIPE);
    RunEnd mouth = new RunEnd.Opening("lower", 0.8, RunEnd.Opening.Kind.FREE);
    runs.add(standing(run("hose", lip, mouth), "gallery"));
    assertFound(
        Finding.Severity.ERROR, "hose", "standsIn", "the run comes down to 600 mm below 'gallery'");
  }

  @Test
  void aJointWhoseWaterWouldHaveToRunUphillIsFound() {
    floors.add(new Floor("gallery", "Gallery", "ground", 2, 9, 0.02, 1, Optional.of("floor")));
    runs.add(
        run(
            "pipe",
            opening("upper", 1.2),
            opening("lower", 0.9),
            new Part.Joint("union", "Union", 1, 1, Part.Joint.Kind.UNION, Optional.of("gallery"))));
    assertFound(
        Finding.Severity.ERROR, "union", "standsIn", "the joint lies 1000 mm below 'gallery'");
  }

  @Test
  void aPipeInTheFloorBuildUpMayLeakOntoThatFloor() {
    drains.add(new Drain("gully", "Gully", -0.3, OptionalDouble.empty()));
    Run buried = run("pipe", opening("lower", 0.5), new RunEnd.AtDrain("gully"));
    runs.add(buried);
    assertThat(findings()).isEmpty();
  }

  @Test
  void aSwitchThatFillsThroughAValveThatOpensByNothingIsFound() {
    switches(Control.LevelSwitch.Action.FILLS, 0);
    assertFound(
        Finding.Severity.ERROR,
        "float-switch",
        "drives[0]",
        "'solenoid' is open by 0 % when it is called for, so nothing ever flows");
  }

  @Test
  void aValveThatOpensWhenCalledForFills() {
    switches(Control.LevelSwitch.Action.FILLS, 1);
    assertThat(findings()).isEmpty();
  }

  @Test
  void aValveThatIsOnlyEverStoppedMayStayShut() {
    switches(Control.LevelSwitch.Action.STOPS_WHEN_HIGH, 0);
    assertThat(findings()).isEmpty();
  }

  private void switches(Control.LevelSwitch.Action action, double opening) {
    circuits.add(new Circuit("sockets", "Sockets", 0));
    Part.Valve.Drive drive =
        new Part.Valve.Drive.Powered(
            new Power("sockets", Power.OnReturn.RESTARTS, 0), Part.Valve.Rest.CLOSED);
    runs.add(
        run(
            "pipe",
            opening("upper", 1.2),
            opening("lower", 0.9),
            new Part.Valve("solenoid", "Solenoid", 0, 2, opening, drive)));
    controls.add(
        new Control.LevelSwitch(
            "float-switch", "Float switch", "lower", 0.8, 0.85, action, List.of("solenoid")));
  }

  private void assertFound(
      Finding.Severity severity, String element, String field, String message) {
    assertThat(findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(severity);
              assertThat(finding.element()).isEqualTo(element);
              assertThat(finding.field()).isEqualTo(field);
              assertThat(finding.message()).contains(message);
              assertThat(finding.remedy()).isNotBlank();
            });
  }

  private List<Finding> findings() {
    return DrawingCheck.check(installation());
  }

  private Installation installation() {
    return new Installation(
        "Two tubs",
        Conditions.USUAL,
        List.of(new Storey("ground", "Ground", 0, 2.5)),
        floors,
        vessels,
        weirs,
        junctions,
        supplies,
        drains,
        runs,
        List.of(),
        circuits,
        controls,
        FailureSettings.USUAL);
  }

  private static Vessel tub(String id, String standsIn, double bottom) {
    Shape shape = new Shape.Box(1, 0.5, 0.5);
    return new Vessel(
        id,
        id,
        Vessel.Role.DISPLAY,
        shape,
        bottom,
        bottom + 0.4,
        List.of(),
        35,
        shape.rimLength(),
        standsIn,
        OptionalDouble.empty());
  }

  private static Vessel basin(String id) {
    Shape shape = new Shape.Box(2, 1, 0.1);
    return new Vessel(
        id,
        id,
        Vessel.Role.BASIN,
        shape,
        0,
        0,
        List.of(),
        35,
        shape.rimLength(),
        "floor",
        OptionalDouble.empty());
  }

  private static Supply supply(Supply.Protection protection) {
    return new Supply(
        "mains",
        "Mains",
        Supply.Kind.MAINS,
        1,
        OptionalDouble.of(3e5),
        OptionalDouble.empty(),
        0,
        protection);
  }

  private static RunEnd opening(String vessel, double elevation) {
    return new RunEnd.Opening(vessel, elevation, RunEnd.Opening.Kind.PORT);
  }

  private static Run run(String id, RunEnd from, RunEnd to, Part... parts) {
    return run(id, from, to, List.of(), parts);
  }

  private static Run run(
      String id, RunEnd from, RunEnd to, List<Run.Waypoint> waypoints, Part... parts) {
    return new Run(
        id,
        id,
        from,
        to,
        Run.Duty.FEED,
        0.03,
        2,
        1e-6,
        List.of(),
        0,
        waypoints,
        List.of(parts),
        false,
        Optional.of("floor"));
  }

  private static Run standing(Run run, String place) {
    return new Run(
        run.id(),
        run.name(),
        run.from(),
        run.to(),
        run.duty(),
        run.bore(),
        run.length(),
        run.roughness(),
        run.fittings(),
        run.extraLoss(),
        run.waypoints(),
        run.parts(),
        run.vented(),
        Optional.of(place));
  }
}
