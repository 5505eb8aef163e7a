package dryfloor.analysis.failure;

import static dryfloor.analysis.failure.ShowroomRuns.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.Run.Duty;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening;
import dryfloor.model.element.RunEnd.Opening.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LandingTest {

  private static final Run UP =
      run(
          "up",
          "Up",
          new Opening("sump", 0.3, Kind.PORT),
          new Opening("display", 4.3, Kind.PORT),
          Duty.FEED,
          List.of(),
          List.of());
  private static final Run OUTSIDE =
      run(
          "outside",
          "Outside",
          new RunEnd.AtSupply("mains"),
          new RunEnd.AtDrain("house-drain"),
          Duty.FEED,
          List.of(),
          List.of());
  private static final Run TO_TEE =
      run(
          "to-tee",
          "To tee",
          new RunEnd.AtSupply("mains"),
          new RunEnd.AtJunction("fill-tee"),
          Duty.FEED,
          List.of(),
          List.of());
  private static final Run FROM_TEE =
      run(
          "from-tee",
          "From tee",
          new RunEnd.AtJunction("fill-tee"),
          new Opening("reservoir", 1.2, Kind.FREE),
          Duty.FEED,
          List.of(),
          List.of());

  private static final Installation DRAWING =
      Showroom.withRuns(List.of(UP, OUTSIDE, TO_TEE, FROM_TEE));

  private static String landing(Run run, double along, double elevation) {
    return new Landing(new Drawing(DRAWING)).from(Optional.empty(), run, along, elevation);
  }

  @Test
  void whatTheJointIsSaidToStandInComesFirst() {
    assertThat(new Landing(new Drawing(DRAWING)).from(Optional.of("sump"), UP, 5, 4))
        .isEqualTo("sump");
  }

  @Test
  void otherwiseWaterLandsBesideTheNearerVessel() {
    assertThat(landing(UP, 1, 0.9)).isEqualTo("plant-tray");
    assertThat(landing(UP, 5, 3.6)).isEqualTo("hall");
  }

  @Test
  void waterDoesNotLandAboveThePlaceItLeaves() {
    assertThat(landing(UP, 4, 2.9)).isEqualTo("plant-tray");
  }

  @Test
  void aJunctionLeadsOnToTheNextVessel() {
    assertThat(landing(TO_TEE, 5, 1.5)).isEqualTo("plant-tray");
  }

  @Test
  void aRunWithoutAnyGroundMustSayWhatItStandsIn() {
    assertThatThrownBy(() -> landing(OUTSIDE, 1, 1))
        .hasMessageContaining("\"outside\" reaches no vessel or floor");
  }
}
