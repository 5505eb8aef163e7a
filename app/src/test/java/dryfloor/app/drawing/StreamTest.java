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
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Marks in a run go the way that its water goes. */
class StreamTest {

  private static final String SEEN = "main-drain";
  private static final String PARTLY_HIDDEN = "return-line";

  private final Installation drawing = drawing();
  private final Plan plan = Plan.of(drawing);

  @Test
  void marksGoFromTheFirstEndToTheSecondOrBack() {
    Point first = onPaper(plan.pipe(SEEN).orElseThrow().pieces().getFirst().from());

    Shape.Stream there = marks(SEEN, Scene.Flow.Kind.PIPE, 10).getFirst();
    Shape.Stream back = marks(SEEN, Scene.Flow.Kind.PIPE_BACKWARDS, 10).getFirst();

    assertThat(there.points().getFirst().distanceTo(first)).isCloseTo(0, within(1e-6));
    assertThat(there.travelled()).isEqualTo(10);
    assertThat(back.points()).isEqualTo(there.points());
    assertThat(back.travelled()).isEqualTo(-10);
  }

  @Test
  void aMarkThatGoesBehindAVesselComesOutWhereItWould() {
    List<Shape.Stream> seen = marks(PARTLY_HIDDEN, Scene.Flow.Kind.PIPE, 0);
    List<Stretch> stretches = Stretch.of(plan, plan.pipe(PARTLY_HIDDEN).orElseThrow());
    assertThat(stretches.stream().anyMatch(Stretch::hidden)).isTrue();

    double passed = 0;
    int next = 0;
    for (Stretch stretch : stretches) {
      List<Point> line = stretch.line().stream().map(this::onPaper).toList();
      if (next < seen.size() && seen.get(next).points().equals(line)) {
        assertThat(-seen.get(next).travelled()).isCloseTo(passed, within(1e-6));
        next++;
      }
      passed += length(line);
    }
    assertThat(next).isEqualTo(seen.size()).isGreaterThan(1);
  }

  @Test
  void nothingGoesWhereNoMotionIsAskedFor() {
    assertThat(streams(scene(SEEN, Scene.Flow.Kind.PIPE), OptionalDouble.empty())).isEmpty();
  }

  private List<Shape.Stream> marks(String run, Scene.Flow.Kind kind, double travelled) {
    return streams(scene(run, kind), OptionalDouble.of(travelled));
  }

  private List<Shape.Stream> streams(Scene scene, OptionalDouble travelled) {
    return BuildingPicture.of(plan, scene).shapes(scene, travelled).stream()
        .filter(Shape.Stream.class::isInstance)
        .map(Shape.Stream.class::cast)
        .toList();
  }

  private Point onPaper(Point inBuilding) {
    return BuildingPicture.of(plan, still()).onPaper(inBuilding);
  }

  private static double length(List<Point> line) {
    double length = 0;
    for (int i = 1; i < line.size(); i++) {
      length += line.get(i - 1).distanceTo(line.get(i));
    }
    return length;
  }

  private Scene still() {
    return DraftScene.of(Wording.of(drawing, Units.METRIC), "", "");
  }

  /** Water goes through one run only. */
  private Scene scene(String run, Scene.Flow.Kind kind) {
    Scene still = still();
    return new Scene(
        "",
        "",
        "",
        still.verdict(),
        "",
        still.waters(),
        Map.of(),
        List.of(new Scene.Flow(run, kind, "", "", "")),
        Map.of(),
        Set.of(),
        List.of(),
        List.of(),
        still.heights(),
        "");
  }

  private static Installation drawing() {
    Path file = Path.of("..", "scenarios", "first-look", "as-drawn.json");
    return switch (InstallationFile.read(file)) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }
}
