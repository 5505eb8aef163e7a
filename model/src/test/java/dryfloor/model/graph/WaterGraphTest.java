package dryfloor.model.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where water can go in the display above a sump. */
class WaterGraphTest {

  private final Installation house = house();
  private final WaterGraph graph = WaterGraph.of(house);

  @Test
  void aSumpInATraySpillsIntoTheTrayThenOnTheFloorThenBeyond() {
    assertThat(graph.spillPath("sump"))
        .containsExactly(
            new Place.Drawn("tray", Place.Kind.VESSEL),
            new Place.Drawn("plant-room", Place.Kind.FLOOR),
            Place.BEYOND);
  }

  @Test
  void aDisplaySpillsThroughTheHallDownToTheCellar() {
    assertThat(graph.spillPath("display"))
        .containsExactly(
            new Place.Drawn("hall", Place.Kind.FLOOR),
            new Place.Drawn("plant-room", Place.Kind.FLOOR),
            Place.BEYOND);
  }

  @Test
  void aDrainSpillsNowhere() {
    assertThat(graph.spillPath("gully")).isEmpty();
  }

  @Test
  void aSpillInTheHallReachesTheGullyAndOneInTheCellarDoesNot() {
    assertThat(graph.drainsReachable("display")).containsExactly("gully");
    assertThat(graph.drainsReachable("tray")).isEmpty();
  }

  @Test
  void runsThatMeetAtTheTeeAreSolvedTogetherAndAllOthersAlone() {
    assertThat(graph.hydraulicGroups())
        .contains(
            new HydraulicGroup(
                Set.of("riser", "outlet-left", "outlet-right"), Set.of("return-tee")),
            new HydraulicGroup(Set.of("main-drain"), Set.of()))
        .hasSize(house.runs().size() - 2);
  }

  @Test
  void everyVesselFloorJunctionSupplyAndDrainIsAPlaceAndSoIsBeyond() {
    int places =
        house.vessels().size()
            + house.floors().size()
            + house.junctions().size()
            + house.supplies().size()
            + house.drains().size();
    assertThat(graph.view().vertexSet()).hasSize(places + 1);
    assertThat(graph.view().edgeSet())
        .hasSize(
            house.vessels().size()
                + house.floors().size()
                + house.weirs().size()
                + house.runs().size());
  }

  @Test
  void aSoundHouseHasNoSpillThatComesBack() {
    assertThat(graph.isSpillCycleFree()).isTrue();
  }

  @Test
  void whatIsNoPlaceCannotSpill() {
    assertThatThrownBy(() -> graph.spillPath("return-pump"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'return-pump' is no vessel");
  }

  @Test
  void whoeverLooksAtTheGraphCannotChangeIt() {
    assertThatThrownBy(() -> graph.view().removeVertex(Place.BEYOND))
        .isInstanceOf(RuntimeException.class);
    assertThat(graph.view().containsVertex(Place.BEYOND)).isTrue();
  }

  private static Installation house() {
    try {
      Path file =
          Path.of(
              WaterGraphTest.class.getResource("/installations/display-above-sump.json").toURI());
      return switch (InstallationFile.read(file)) {
        case Reading.Read read -> read.installation();
        case Reading.Rejected rejected -> throw new AssertionError(rejected);
      };
    } catch (java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
