package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Says when a drawing leaves nothing to answer, which must not pass for an answer. */
final class NothingToJudge {

  private NothingToJudge() {}

  /**
   * What is wrong with a drawing of which nothing can be judged.
   *
   * @param failures that it can have
   */
  static Optional<Problem> of(Installation installation, List<Failure> failures) {
    if (failures.isEmpty()) {
      return problem(
          "there is nothing to judge: nothing in this drawing can fail",
          "draw the water too: the level of a vessel, a run, a pump, a supply");
    }
    Set<String> skipped =
        installation.failureSettings().skipped().stream()
            .map(FailureSettings.Skipped::failure)
            .collect(Collectors.toSet());
    return failures.stream().map(FailureNames::id).allMatch(skipped::contains)
        ? problem(
            "there is nothing to judge: the drawing switches off every failure",
            "leave at least one of them out of \"skipped\"")
        : Optional.empty();
  }

  private static Optional<Problem> problem(String message, String remedy) {
    return Optional.of(new Problem(0, 0, "", message, remedy));
  }
}
