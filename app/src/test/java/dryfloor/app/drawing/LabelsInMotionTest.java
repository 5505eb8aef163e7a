package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels keep their places while the water moves, and none ever covers another. */
class LabelsInMotionTest {

  @ParameterizedTest
  @CsvSource({
    "first-look, joint-parts.return-line.pump-union, 1",
    "first-look, joint-parts.return-line.pump-union, 2",
    "restaurant-seafood, parts-at-lowest-point.left-outlet, 1",
    "restaurant-seafood, parts-at-lowest-point.left-outlet, 2"
  })
  void atNoMomentDoesALabelCoverAnother(String folder, String failure, double letters)
      throws BaselineProblem {
    Film film = Film.of(folder, failure);
    BuildingPicture picture = film.picture(letters);

    film.moments().forEach(time -> noneCoversAnother(texts(picture.shapes(film.at(time)))));
  }

  @Test
  void aLabelWithRoomEnoughStaysWhereItStood() throws BaselineProblem {
    Film film = Film.of("first-look", "joint-parts.return-line.pump-union");
    BuildingPicture picture = film.picture(1);
    Scene end = film.at(Double.POSITIVE_INFINITY);

    List<Shape> first = picture.shapes(end);

    assertThat(picture.shapes(end)).isEqualTo(first);
  }

  @Test
  void aTargetLiesBelowTheLabels() throws BaselineProblem {
    Film film = Film.of("first-look", "joint-parts.return-line.pump-union");
    BuildingPicture picture = film.picture(1);
    List<Shape> target = picture.target("vat");

    List<Shape> all = picture.shapes(film.at(39), OptionalDouble.empty(), target);

    int firstLabel = all.indexOf(texts(all).getFirst());
    assertThat(target).isNotEmpty();
    assertThat(all.subList(0, firstLabel)).containsAll(target);
  }

  private static void noneCoversAnother(List<Shape.Text> texts) {
    for (int i = 0; i < texts.size(); i++) {
      Area area = texts.get(i).area();
      assertThat(texts.subList(i + 1, texts.size()))
          .as("covered by " + texts.get(i))
          .filteredOn(other -> other.area().overlaps(area))
          .isEmpty();
    }
  }

  private static List<Shape.Text> texts(List<Shape> shapes) {
    return shapes.stream()
        .filter(Shape.Text.class::isInstance)
        .map(Shape.Text.class::cast)
        .toList();
  }

  /** A failure as it is played. */
  private record Film(Installation drawing, MovingScene scenes) {

    static Film of(String folder, String id) throws BaselineProblem {
      Installation drawing = drawing(folder);
      Failure failure = FailureCatalogue.find(drawing, id).orElseThrow();
      FailureResult result = Inquiry.of(drawing, () -> false).answer(List.of(failure));
      if (!(result instanceof FailureResult.Answered answered)) {
        throw new AssertionError(id + " has no answer");
      }
      return new Film(
          drawing,
          MovingScene.of(
              Wording.of(drawing, Units.METRIC),
              id,
              FailureTraits.components(failure),
              answered.outcome()));
    }

    BuildingPicture picture(double letters) {
      return BuildingPicture.of(Plan.of(drawing), scenes.end(), letters);
    }

    Scene at(double time) {
      return scenes.at(time);
    }

    /** Just after each event, and in order. */
    List<Double> moments() {
      return scenes.outcome().story().stream().map(event -> event.time() + 0.01).toList();
    }

    private static Installation drawing(String folder) {
      return switch (InstallationFile.read(Path.of("..", "scenarios", folder, "as-drawn.json"))) {
        case Reading.Read read -> read.installation();
        case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
      };
    }
  }
}
