package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.Wording;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A building on a page can be read, however large it is. */
class PictureOnAPageTest {

  /** Width of an A4 sheet between its margins, in points of a printer. */
  private static final double SHEET = 182 / 25.4 * 72;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-look/as-drawn",
        "restaurant-seafood/as-drawn",
        "research-rack-room/as-drawn",
        "coral-nursery/as-drawn",
        "grand-hall/corrected"
      })
  void takesTheWholeWidthOfASheetAndItsLettersAreFivePointsHigh(String name) {
    Elevation picture = draft(name, 400);

    assertThat(picture.height()).isLessThanOrEqualTo(400);
    double printed = SHEET / picture.width();
    assertThat(texts(picture)).allMatch(text -> text.size() * printed >= 5 - 1e-3);
  }

  @Test
  void aTallBuildingUsesTheRoomBesideIt() {
    Installation hall = drawing("grand-hall/corrected");
    Elevation picture = draft("grand-hall/corrected", 400);

    double rightmost =
        picture.shapes().stream()
            .filter(shape -> shape.style() == Style.ROOM)
            .filter(Shape.Line.class::isInstance)
            .flatMap(shape -> ((Shape.Line) shape).points().stream())
            .mapToDouble(Point::x)
            .max()
            .orElseThrow();

    Plan close = Plan.of(hall);
    double closely = 400 / (close.top() - close.bottom()) * close.width();
    assertThat(rightmost).isGreaterThan(1.3 * closely);
  }

  @Test
  void aHigherSheetHasALargerBuilding() {
    assertThat(draft("first-look/as-drawn", 700).height())
        .isGreaterThan(draft("first-look/as-drawn", 400).height() + 250);
  }

  @Test
  void aVesselThatStaysAsItWasHasItsNameOnlyAndOneThatChangesItsNumbers() {
    Scene scene =
        SceneWords.of(
            Wording.of(SampleInstallation.get(), Units.METRIC), "", List.of(), SampleOutcome.wet());
    List<String> words =
        texts(Elevation.onAPage(SampleInstallation.get(), scene, 600)).stream()
            .map(Shape.Text::text)
            .toList();

    assertThat(scene.waters().values()).anyMatch(water -> water.note().startsWith("no change"));
    assertThat(words).doesNotContain("no change");
    scene.waters().values().stream()
        .filter(water -> Math.abs(water.after() - water.before()) > 0.01)
        .map(water -> water.note().split("\n", -1)[0])
        .forEach(change -> assertThat(words).anyMatch(word -> word.startsWith(change)));
  }

  /** The sumps of the hall stand side by side under the lowest ceiling. */
  @Test
  void whatWouldStandFarFromItsVesselIsANumberThereAndToldBelow() throws BaselineProblem {
    Elevation picture =
        Elevation.onAPage(drawing("grand-hall/corrected"), powerLossInTheHall(), 440);

    List<String> words = texts(picture).stream().map(Shape.Text::text).toList();
    List<String> numbers = words.stream().filter(word -> word.matches("[1-9][0-9]?")).toList();
    assertThat(numbers).contains("1", "2", "3");
    numbers.forEach(number -> assertThat(numbers).filteredOn(number::equals).hasSize(2));
    assertThat(words).contains("Sump A, filter chamber");
    assertThat(leaders(picture)).allMatch(length -> length <= 60);
    assertThat(picture.height()).isLessThanOrEqualTo(440);
  }

  private static Scene powerLossInTheHall() throws BaselineProblem {
    Installation hall = drawing("grand-hall/corrected");
    return switch (Sweep.together(hall, List.of(new Failure.BuildingLosesPower()))) {
      case FailureResult.Answered answered ->
          SceneWords.of(Wording.of(hall, Units.METRIC), "", List.of(), answered.outcome());
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }

  private static List<Double> leaders(Elevation picture) {
    return picture.shapes().stream()
        .filter(shape -> shape.style() == Style.LEADER)
        .filter(Shape.Line.class::isInstance)
        .map(shape -> ((Shape.Line) shape).points())
        .map(points -> points.getFirst().distanceTo(points.getLast()))
        .toList();
  }

  private static Elevation draft(String name, double high) {
    Installation drawing = drawing(name);
    return Elevation.onAPage(
        drawing, DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""), high);
  }

  private static List<Shape.Text> texts(Elevation picture) {
    return picture.shapes().stream()
        .filter(Shape.Text.class::isInstance)
        .map(Shape.Text.class::cast)
        .toList();
  }

  private static Installation drawing(String name) {
    return switch (InstallationFile.read(Path.of("..", "scenarios", name + ".json"))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }
}
