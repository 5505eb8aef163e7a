package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Outcome;

/** Is told how far a sweep has got and may end it early. Called from several threads. */
public interface Progress {

  /** Nobody watches. */
  Progress NONE =
      new Progress() {
        @Override
        public void finished(int done, int of) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /** Normal operation has settled. */
  default void settled(Outcome normal) {}

  /** One failure is answered. */
  default void answered(FailureResult result) {}

  /** So many failures of so many are answered. */
  void finished(int done, int of);

  /** Whether to stop; asked often. */
  boolean cancelled();
}
