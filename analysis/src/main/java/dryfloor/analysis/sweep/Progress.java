package dryfloor.analysis.sweep;

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

  /** So many failures of so many are answered. */
  void finished(int done, int of);

  /** Whether to stop; asked often. */
  boolean cancelled();
}
