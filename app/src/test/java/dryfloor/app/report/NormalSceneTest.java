package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.app.drawing.Scene;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The picture of an installation in which all is well. */
class NormalSceneTest {

  @Test
  void arrowsOfNormalOperationSayHowMuchFlowsAndNotHowMuchFlowedUntilItSettled()
      throws BaselineProblem {
    Wording wording = Wording.of(SampleInstallation.get(), Units.METRIC);
    Outcome normal = Inquiry.of(SampleInstallation.get(), () -> false).normal();

    Scene scene = SceneWords.ofNormal(wording, "Normal operation", List.of(), normal);

    assertThat(scene.flows()).extracting(Scene.Flow::path).contains("main-drain", "return-line");
    assertThat(scene.flows()).allMatch(flow -> flow.text().endsWith("L/min"));
  }

  @Test
  void aLevelThatSettlesByNoMoreThanARulerShowsIsNoChange() throws BaselineProblem {
    Installation drawing = ShippedDrawing.read("first-look/as-drawn.json");
    Wording wording = Wording.of(drawing, Units.METRIC);
    Outcome normal = Inquiry.of(drawing, () -> false).normal();

    MovingScene scenes = MovingScene.ofNormal(wording, "Normal operation", List.of(), normal);

    for (Scene scene : List.of(scenes.at(0), scenes.at(60), scenes.end())) {
      assertThat(note(scene, "display")).isEqualTo("43 mm below rim");
      assertThat(note(scene, "top-off")).isEqualTo("250 mm below rim");
    }
  }

  @Test
  void aLevelThatSettlesElsewhereThanDrawnSaysSo() throws BaselineProblem {
    Installation drawing = ShippedDrawing.read("tape-measure/as-drawn.json");
    Outcome normal = Inquiry.of(drawing, () -> false).normal();

    Scene scene =
        SceneWords.ofNormal(
            Wording.of(drawing, Units.METRIC), "Normal operation", List.of(), normal);

    assertThat(note(scene, "display")).startsWith("+18 mm from as drawn\n");
    assertThat(scene.waters().values())
        .extracting(Scene.Water::note)
        .noneMatch(note -> note.contains(" L"));
  }

  private static String note(Scene scene, String vessel) {
    return Optional.ofNullable(scene.waters().get(vessel)).orElseThrow().note();
  }
}
