package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Water that leaves is drawn to leave where it does, and to land where it lands. */
class SpillPictureTest {

  private static final Installation UPSTAIRS = drawing("first-look", "as-drawn");
  private static final Installation RESTAURANT = drawing("restaurant-seafood", "corrected");

  @Test
  void waterOutOfASeamBeginsAtTheFootOfTheWallAndFallsIntoThePan() {
    Building building = new Building(UPSTAIRS);

    List<Point> water = building.spill(out(Scene.Flow.Kind.WALL, "display", "pan"));

    Tank display = building.tank("display");
    assertThat(water.getFirst().y()).isCloseTo(building.y(display.bottom()), within(5.0));
    assertThat(water.getFirst().x()).isCloseTo(building.x(display.left()), within(0.1));
    assertThat(water).allMatch(point -> point.y() >= water.getFirst().y());
    assertThat(water.getLast().x())
        .isBetween(
            building.x(building.tank("pan").left()), building.x(building.tank("display").left()));
  }

  @Test
  void waterOutOfAVesselThatStandsLowRunsAlongTheBottomOfTheVat() {
    Building building = new Building(UPSTAIRS);

    List<Point> water = building.spill(out(Scene.Flow.Kind.WALL, "sump", "vat"));

    assertThat(water.getLast().y()).isEqualTo(water.getFirst().y());
    assertThat(water.getFirst().y())
        .isCloseTo(building.y(building.tank("sump").bottom()), within(5.0));
  }

  @Test
  void waterOutOfAVesselWithANeighbourLeavesOnTheOtherSide() {
    Building building = new Building(UPSTAIRS);

    List<Point> water = building.spill(out(Scene.Flow.Kind.WALL, "overflow-box", "pan"));

    assertThat(water.getFirst().x())
        .isCloseTo(building.x(building.tank("overflow-box").right()), within(0.1));
  }

  @Test
  void waterOverARimBeginsAtTheRim() {
    Building building = new Building(UPSTAIRS);

    List<Point> water = building.spill(out(Scene.Flow.Kind.SPILL, "display", "pan"));

    assertThat(water.getFirst().y())
        .isCloseTo(building.y(building.tank("display").rim()), within(0.1));
  }

  @Test
  void waterOutOfAPartedRunThatLandsInItsVesselIsNoSpillAndFallsInside() {
    Building building = new Building(RESTAURANT);
    Tank display = building.tank("lobster-display");

    List<Shape> shapes =
        building.shapes(
            new Scene.Flow(
                "left-outlet", Scene.Flow.Kind.PIPE_SPILL, "left-outlet", "lobster-display", ""));

    assertThat(of(shapes, Style.SPILL)).isEmpty();
    assertThat(of(shapes, Style.FLOW)).hasSize(1);
    assertThat(of(shapes, Style.FLOW).getFirst().points().getLast().x())
        .isBetween(building.x(display.left()), building.x(display.right()));
  }

  private static Scene.Flow out(Scene.Flow.Kind kind, String vessel, String landing) {
    return new Scene.Flow(vessel, kind, vessel, landing, "");
  }

  private static List<Shape.Line> of(List<Shape> shapes, Style style) {
    return shapes.stream()
        .filter(Shape.Line.class::isInstance)
        .map(Shape.Line.class::cast)
        .filter(line -> line.style() == style)
        .toList();
  }

  /** A building and what one flow adds to its picture. */
  private record Building(Installation drawing) {

    Tank tank(String id) {
      return Optional.ofNullable(plan().tanks().get(id)).orElseThrow();
    }

    double x(double across) {
      return picture().onPaper(new Point(across, 0)).x();
    }

    double y(double elevation) {
      return picture().onPaper(new Point(0, elevation)).y();
    }

    List<Point> spill(Scene.Flow flow) {
      return of(shapes(flow), Style.SPILL).getFirst().points();
    }

    List<Shape> shapes(Scene.Flow flow) {
      return picture().shapes(scene(flow));
    }

    private Plan plan() {
      return Plan.of(drawing);
    }

    private BuildingPicture picture() {
      return BuildingPicture.of(plan(), still());
    }

    private Scene still() {
      return DraftScene.of(Wording.of(drawing, Units.METRIC), "", "");
    }

    private Scene scene(Scene.Flow flow) {
      Scene still = still();
      return new Scene(
          "",
          "",
          "",
          still.verdict(),
          "",
          still.waters(),
          Map.of(),
          List.of(flow),
          Map.of(),
          Set.of(),
          List.of(),
          List.of(),
          still.heights(),
          "");
    }
  }

  private static Installation drawing(String folder, String name) {
    Path file = Path.of("..", "scenarios", folder, name + ".json");
    return switch (InstallationFile.read(file)) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }
}
