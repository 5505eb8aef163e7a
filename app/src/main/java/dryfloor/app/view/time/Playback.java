package dryfloor.app.view.time;

import dryfloor.app.report.TimeScale;
import dryfloor.app.view.work.Work;
import java.util.List;
import java.util.OptionalDouble;
import javafx.animation.AnimationTimer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** Moves the moment that is looked at: plays, stops, steps from event to event. */
public final class Playback {

  /** A whole play takes so long (s). */
  private static final double LENGTH = 20;

  /** A longer gap between two pulses (s) is not made up for: nothing is to be skipped unseen. */
  private static final double LONGEST_PULSE = 0.25;

  /** So fast do marks in the runs go with the water (points/s), whatever the pace of the play. */
  private static final double MARKS = 45;

  /** Moments nearer than this (s) are the same. */
  private static final double SAME = 1e-6;

  private final Work work;
  private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(false);
  private final AnimationTimer timer = new Pulse();
  private Pace pace = new Pace(new TimeScale(1), LENGTH);
  private List<Double> events = List.of();
  private double played;

  /** Moves the moment of this work. */
  public Playback(Work work) {
    this.work = work;
  }

  /**
   * What is played from now on.
   *
   * @param times of its events (s), rising
   */
  public void use(TimeScale scale, List<Double> times) {
    pause();
    pace = new Pace(scale, LENGTH);
    events = List.copyOf(times);
  }

  /** Whether it plays. */
  public ReadOnlyBooleanProperty playing() {
    return playing.getReadOnlyProperty();
  }

  /**
   * How far marks have gone with the water while it played (points); empty where it does not play.
   * A play squeezes days into seconds, so their pace tells nothing of the water's own.
   */
  public OptionalDouble travelled() {
    return playing.get() ? OptionalDouble.of(MARKS * played) : OptionalDouble.empty();
  }

  /** Plays on, from the beginning where it is at the end; or stops. */
  public void playOrPause() {
    if (playing.get()) {
      pause();
    } else {
      if (isAtEnd()) {
        work.moment().set(0);
      }
      playing.set(true);
      timer.start();
    }
  }

  /** Stops where it is. */
  public void pause() {
    playing.set(false);
    timer.stop();
  }

  private boolean isAtEnd() {
    return Double.isInfinite(work.moment().get());
  }

  /** Goes to the next event, or to the end after the last. */
  public void next() {
    double now = work.moment().get();
    goTo(
        events.stream()
            .filter(time -> time > now + SAME)
            .findFirst()
            .orElse(Double.POSITIVE_INFINITY));
  }

  /** Goes to the event before. */
  public void previous() {
    double now = work.moment().get();
    goTo(events.stream().filter(time -> time < now - SAME).reduce(0.0, (a, b) -> b));
  }

  /** Goes to a moment (s after the failure), and stops there; infinite for the end. */
  public void goTo(double moment) {
    pause();
    work.moment().set(moment);
  }

  /** Goes on a little with every pulse of the screen. */
  private final class Pulse extends AnimationTimer {

    private long last;

    @Override
    public void start() {
      last = 0;
      super.start();
    }

    @Override
    public void handle(long now) {
      if (last != 0) {
        goOn(Math.min((now - last) / 1e9, LONGEST_PULSE));
      }
      last = now;
    }

    private void goOn(double elapsed) {
      if (isAtEnd()) {
        pause();
        return;
      }
      played += elapsed;
      double next = pace.after(work.moment().get(), elapsed);
      if (pace.isOver(next)) {
        goTo(Double.POSITIVE_INFINITY);
      } else {
        work.moment().set(next);
      }
    }
  }
}
