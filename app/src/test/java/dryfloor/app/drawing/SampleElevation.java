package dryfloor.app.drawing;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.Wording;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;

/** Pictures of the sample installation. */
final class SampleElevation {

  private SampleElevation() {}

  static Elevation of(Outcome outcome, Units units) {
    Installation installation = SampleInstallation.get();
    return Elevation.of(
        Plan.of(installation),
        SceneWords.of(
            Wording.of(installation, units),
            "Power lost in the whole building",
            List.of("return-break"),
            outcome));
  }
}
