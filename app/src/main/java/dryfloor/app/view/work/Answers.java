package dryfloor.app.view.work;

import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import java.util.List;

/** What is known about the failures of a drawing. */
public sealed interface Answers {

  /** The drawing that was asked about; another one than the present means that this is stale. */
  Installation installation();

  /** Nothing yet. */
  record Awaited(Installation installation) implements Answers {}

  /** Every failure is answered. */
  record Known(SweepResult sweep) implements Answers {
    @Override
    public Installation installation() {
      return sweep.installation();
    }
  }

  /** The drawing can't be analysed as it is. */
  record Faulty(Installation installation, List<Finding> findings) implements Answers {
    public Faulty {
      findings = List.copyOf(findings);
    }
  }

  /** It spills or never settles when all is well, and why. */
  record Unsettled(Installation installation, String reason) implements Answers {}
}
