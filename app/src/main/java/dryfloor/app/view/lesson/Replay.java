package dryfloor.app.view.lesson;

import dryfloor.analysis.outcome.Trajectory;
import java.util.function.DoubleConsumer;
import javafx.animation.AnimationTimer;

/**
 * Plays what happened, quick where little changes: each recorded moment has the same share of the
 * time, and moments are recorded where levels bend.
 */
final class Replay extends AnimationTimer {

  private static final double NANOSECONDS = 1e9;
  private static final double LENGTH = 8;
  private static final double BETWEEN_PICTURES = 1.0 / 15;

  private final Trajectory trajectory;
  private final DoubleConsumer moment;
  private final Runnable end;
  private long begun;
  private double last;

  /**
   * Ready to play.
   *
   * @param moment is told each moment to be shown (s after the failure)
   * @param end is told that all was shown
   */
  Replay(Trajectory trajectory, DoubleConsumer moment, Runnable end) {
    this.trajectory = trajectory;
    this.moment = moment;
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
      moment.accept(timeAt(elapsed / LENGTH));
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
