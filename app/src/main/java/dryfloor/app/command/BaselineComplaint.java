package dryfloor.app.command;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.NoAnswerWords;
import dryfloor.app.report.StoryDigest;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import dryfloor.model.unit.Units;
import java.util.stream.Collectors;

/** Says why a drawing does not work even when all is well. */
final class BaselineComplaint {

  private BaselineComplaint() {}

  private static String remedy(Wording wording, BaselineProblem problem) {
    boolean moves =
        problem.outcome().filter(o -> o.ending() instanceof Ending.StillMoving).isPresent();
    String longer =
        moves
            ? "give it longer than "
                + wording.amounts().time(wording.installation().conditions().away())
                + " to settle (--away or \"away\"), or "
            : "";
    return longer
        + "mend the drawing first; no failure can be judged before normal operation is sound";
  }

  static Finding of(Installation installation, BaselineProblem problem) {
    Wording wording = Wording.of(installation, Units.METRIC);
    StoryDigest digest = new StoryDigest(wording);
    String story =
        problem.outcome().stream()
            .flatMap(outcome -> digest.of(outcome).stream())
            .map(moment -> "\n    " + moment.time() + "  " + moment.sentence())
            .collect(Collectors.joining());
    return new Finding(
        Finding.Severity.ERROR,
        problem.element(),
        "",
        "normal operation is not sound: "
            + new NoAnswerWords(wording).reason(String.valueOf(problem.getMessage()))
            + story,
        remedy(wording, problem));
  }
}
