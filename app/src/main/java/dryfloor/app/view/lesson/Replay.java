package dryfloor.app.view.lesson;

import dryfloor.analysis.outcome.Trajectory;
import javafx.animation.AnimationTimer;

/**
 * Plays what happened, quick where little changes: each recorded moment has the same share of the
 * time, and moments are recorded where levels bend.
 */
final class Replay extends AnimationTimer {

  /** So fast do marks in the runs go with the water (points/s). */
  private static final double MARKS = 45;

  private static final double NANOSECONDS = 1e9;
  private static final double LENGTH = 8;
  private static final double BETWEEN_PICTURES = 1.0 / 15;

  private final Trajectory trajectory;
  private final Shown shown;
  private final Runnable end;
  private long begun;
  private double last;

  /** Shows a moment (s after the failure), marks having gone so far with the water (points). */
  interface Shown {
    void show(double moment, double travelled);
  }

  /**
   * Ready to play.
   *
   * @param shown is told each moment to be shown
   * @param end is told that all was shown
   */
  Replay(Trajectory trajectory, Shown shown, Runnable end) {
    this.trajectory = trajectory;
    this.shown = shown;
    this.end = end;
  }

  /** Plays from the beginning. */
  void play() {
    begun = 0;
    last = -1;
    start();
  }

  @Override
  public void handle(long now) {
    if (begun == 0) {
      begun = now;
    }
    double elapsed = (now - begun) / NANOSECONDS;
    if (elapsed >= LENGTH) {
      stop();
      end.run();
    } else if (elapsed - last >= BETWEEN_PICTURES) {
      last = elapsed;
      shown.show(timeAt(elapsed / LENGTH), MARKS * elapsed);
    }
  }

  private double timeAt(double share) {
    double place = share * (trajectory.moments() - 1);
    int before = (int) place;
    int after = Math.min(before + 1, trajectory.moments() - 1);
    double start = trajectory.time(before);
    return start + (place - before) * (trajectory.time(after) - start);
  }
}
