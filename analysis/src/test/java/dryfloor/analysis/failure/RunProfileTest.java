package dryfloor.analysis.failure;

import static dryfloor.analysis.failure.ShowroomRuns.joint;
import static dryfloor.analysis.failure.ShowroomRuns.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.RunProfile.Point;
import dryfloor.model.element.Run;
import dryfloor.model.element.Run.Duty;
import dryfloor.model.element.Run.Waypoint;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening;
import dryfloor.model.element.RunEnd.Opening.Kind;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Runs of 6 m; the sump's rim is at 0.7 m, the overflow box's bottom at 3.85 m. */
class RunProfileTest {

  private static final RunEnd IN_DISPLAY = new Opening("display", 4.3, Kind.PORT);

  private static RunProfile profile(RunEnd from, RunEnd to, List<Waypoint> points, Part... parts) {
    Run run = run("line", "Line", from, to, Duty.FEED, points, List.of(parts));
    return new RunProfile(new Drawing(Showroom.withRuns(List.of(run))), run);
  }

  @Test
  void aRunIsStraightBetweenItsWaypoints() {
    RunProfile profile =
        profile(
            new Opening("sump", 0.3, Kind.PORT),
            IN_DISPLAY,
            List.of(new Waypoint(0.1, 1), new Waypoint(4.6, 5)));
    assertThat(profile.elevationAt(0)).isEqualTo(0.3);
    assertThat(profile.elevationAt(0.5)).isCloseTo(0.2, within(1e-12));
    assertThat(profile.elevationAt(3)).isCloseTo(2.35, within(1e-12));
    assertThat(profile.elevationAt(6)).isCloseTo(4.3, within(1e-12));
  }

  @Test
  void theLowestPointOfARunFromAPortMayBeThePort() {
    RunProfile profile = profile(new Opening("sump", 0.3, Kind.PORT), IN_DISPLAY, List.of());
    assertThat(profile.lowestOutside()).contains(new Point(0, 0.3));
  }

  @Test
  void aHoseOutOfTheSumpPartsWhereItPassesTheRim() {
    RunProfile profile = profile(new Opening("sump", 0.3, Kind.FREE), IN_DISPLAY, List.of());
    Point low = profile.lowestOutside().orElseThrow();
    assertThat(low.elevation()).isCloseTo(0.7, within(1e-12));
    assertThat(low.along()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void aStandpipePartsBelowTheBottomItPassesThrough() {
    RunProfile profile =
        profile(
            new Opening("overflow-box", 4.3, Kind.STANDPIPE),
            new Opening("sump", 0.4, Kind.FREE),
            List.of());
    assertThat(profile.lowestOutside().orElseThrow().elevation()).isCloseTo(0.7, within(1e-12));
    assertThat(profile.lowestOutside().orElseThrow().along()).isBetween(5.0, 6.0);
  }

  @Test
  void aRunThatStaysInsideItsVesselCannotPartOutside() {
    RunProfile profile =
        profile(
            new Opening("sump", 0.3, Kind.FREE), new Opening("sump", 0.6, Kind.FREE), List.of());
    assertThat(profile.lowestOutside()).isEmpty();
  }

  /** Below the rim of the overflow box all the way: it leaves through the bottom or a wall. */
  @Test
  void aRunThatNeverRisesToTheRimOfItsVesselStillPartsWhereItEndsElsewhere() {
    RunEnd free = new Opening("overflow-box", 4.3, Kind.FREE);
    RunProfile throughTheBottom =
        profile(new Opening("sump", 0.3, Kind.PORT), free, List.of(new Waypoint(4.31, 5)));
    assertThat(throughTheBottom.lowestOutside()).contains(new Point(0, 0.3));
    RunProfile throughTheWall = profile(new RunEnd.AtDrain("house-drain"), free, List.of());
    assertThat(throughTheWall.lowestOutside()).isPresent();
    RunProfile intoWhatItStandsIn = profile(IN_DISPLAY, free, List.of());
    assertThat(intoWhatItStandsIn.lowestOutside()).isEmpty();
  }

  /**
   * The reservoir's bottom is at 0.3 m, lower than the end of its standpipe over the sump's rim, so
   * it leaves through the wall; a hose lies over both rims.
   */
  @Test
  void aStraightRunToAnEndOverAnotherRimPartsHalfway() {
    RunEnd overTheSump = new Opening("sump", 0.8, Kind.FREE);
    RunProfile standpipe =
        profile(new Opening("reservoir", 1.0, Kind.STANDPIPE), overTheSump, List.of());
    RunProfile hose = profile(new Opening("reservoir", 1.2, Kind.FREE), overTheSump, List.of());

    assertThat(standpipe.lowestOutside().orElseThrow().along()).isCloseTo(3, within(1e-12));
    assertThat(standpipe.lowestOutside().orElseThrow().elevation()).isCloseTo(0.9, within(1e-12));
    assertThat(hose.lowestOutside().orElseThrow().elevation()).isCloseTo(1.0, within(1e-12));
  }

  @Test
  void aJointAtTheLowestPointStandsForIt() {
    List<Waypoint> sag = List.of(new Waypoint(0.1, 1), new Waypoint(4.6, 5));
    RunEnd port = new Opening("sump", 0.3, Kind.PORT);
    RunProfile with =
        profile(port, IN_DISPLAY, sag, joint("low", "Low", 1.0, 0.105, Optional.empty()));
    RunProfile without =
        profile(port, IN_DISPLAY, sag, joint("high", "High", 2.0, 1.2, Optional.empty()));
    assertThat(with.hasJointAt(with.lowestOutside().orElseThrow())).isTrue();
    assertThat(without.hasJointAt(without.lowestOutside().orElseThrow())).isFalse();
  }

  @Test
  void aJointInAnotherSagBehindACrestDoesNot() {
    RunProfile profile =
        profile(
            new Opening("sump", 0.3, Kind.PORT),
            IN_DISPLAY,
            List.of(new Waypoint(0.1, 1), new Waypoint(1, 2), new Waypoint(0.1, 3)),
            joint("other", "Other sag", 3, 0.1, Optional.empty()));
    assertThat(profile.hasJointAt(new Point(1, 0.1))).isFalse();
  }
}
