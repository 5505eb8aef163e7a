package dryfloor.analysis.failure;

import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Checks that the failures which a drawing names are such that it can have. */
public final class NamedFailures {

  private NamedFailures() {}

  /** What is wrong with the failures that it switches off and those its sequences name. */
  public static List<Finding> check(Installation installation) {
    return Stream.concat(skips(installation), EventFailures.check(installation).stream()).toList();
  }

  /** To switch off what is no failure changes no answer, but is hardly what was meant. */
  private static Stream<Finding> skips(Installation installation) {
    List<FailureSettings.Skipped> all = installation.failureSettings().skipped();
    List<FailureSettings.Skipped> unknown = FailureCatalogue.unknownSkips(installation);
    return IntStream.range(0, all.size())
        .filter(i -> unknown.contains(all.get(i)))
        .mapToObj(
            i ->
                new Finding(
                    Finding.Severity.WARNING,
                    "",
                    "failures.skipped[" + i + "].failure",
                    "no failure of this drawing is called '" + all.get(i).failure() + "'",
                    "an id as 'dryfloor list' gives it"
                        + EventFailures.alike(installation, all.get(i).failure())));
  }
}
