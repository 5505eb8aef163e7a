package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.StorySentence;
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
    StorySentence sentence = new StorySentence(wording);
    String story =
        problem.outcome().stream()
            .flatMap(outcome -> outcome.story().stream())
            .map(
                event ->
                    "\n    " + wording.amounts().time(event.time()) + "  " + sentence.of(event))
            .collect(Collectors.joining());
    return new Problem(
        1,
        1,
        "",
        "the drawing does not work even when all is well: " + problem.getMessage() + story,
        "mend the drawing first; no failure can be judged before normal operation is sound");
  }
}
