package dryfloor.analysis.fuzz;

import dryfloor.analysis.sweep.Progress;

/** Lets each answer have so many steps and then cancels it. For one thread. */
final class StepLimit implements Progress {

  private final int most;
  private int taken;
  private int longest;
  private int cancelled;

  StepLimit(int most) {
    this.most = most;
  }

  @Override
  public void finished(int done, int of) {
    longest = Math.max(longest, taken);
    cancelled += taken > most ? 1 : 0;
    taken = 0;
  }

  @Override
  public boolean cancelled() {
    return ++taken > most;
  }

  /** How many answers had no time to finish. */
  int cancelledAnswers() {
    return cancelled;
  }

  /** The most steps that one answer took. */
  int longest() {
    return longest;
  }
}
