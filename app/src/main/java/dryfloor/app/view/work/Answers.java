package dryfloor.app.view.work;

import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import java.util.List;

/** What is known about the failures of a drawing. */
public sealed interface Answers {

  /** The drawing that was asked about; another one than the present means that this is stale. */
  Installation installation();

  /** Whether nothing more is to come. */
  default boolean isWhole() {
    return switch (this) {
      case Awaited awaited -> false;
      case Known known -> known.outstanding() == 0;
      case Faulty faulty -> true;
      case Unsettled unsettled -> true;
    };
  }

  /** Nothing yet. */
  record Awaited(Installation installation) implements Answers {}

  /**
   * Failures are answered.
   *
   * @param sweep what is known so far
   * @param outstanding how many failures are still being worked out
   */
  record Known(SweepResult sweep, int outstanding) implements Answers {

    /** Every failure is answered. */
    public Known(SweepResult sweep) {
      this(sweep, 0);
    }

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
