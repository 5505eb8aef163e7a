package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.StoryDigest;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.util.stream.Collectors;

/** Says why a drawing does not work even when all is well. */
final class BaselineComplaint {

  private BaselineComplaint() {}

  static Problem of(Installation installation, BaselineProblem problem) {
    Wording wording = Wording.of(installation, Units.METRIC);
    StoryDigest digest = new StoryDigest(wording);
    String story =
        problem.outcome().stream()
            .flatMap(outcome -> digest.of(outcome.story()).stream())
            .map(moment -> "\n    " + moment.time() + "  " + moment.sentence())
            .collect(Collectors.joining());
    return new Problem(
        0,
        0,
        "",
        "the drawing does not work even when all is well: " + problem.getMessage() + story,
        "mend the drawing first; no failure can be judged before normal operation is sound");
  }
}
