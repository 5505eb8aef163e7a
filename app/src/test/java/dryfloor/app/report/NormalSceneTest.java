package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.app.drawing.Scene;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.unit.Units;
import java.util.List;
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
}
