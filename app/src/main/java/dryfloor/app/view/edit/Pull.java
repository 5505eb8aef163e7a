package dryfloor.app.view.edit;

import dryfloor.app.drawing.Handle;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import java.util.List;

/**
 * A handle in the hand, from where it was taken until it is let go. It moves by whole millimetres
 * and stops where the drawing would no longer make sense.
 */
public final class Pull {

  private static final double STEP = 0.001;

  private final Installation before;
  private final Handle handle;
  private final Soundness soundness;

  /**
   * Where a pull has come to.
   *
   * @param limit why it goes no further; empty where it is where the hand is
   */
  public record Reached(Installation drawing, double elevation, List<Finding> limit) {
    public Reached {
      limit = List.copyOf(limit);
    }
  }

  /** Takes hold of a handle of this drawing. */
  public Pull(Installation before, Handle handle) {
    this.before = before;
    this.handle = handle;
    this.soundness = new Soundness(before);
  }

  public Handle handle() {
    return handle;
  }

  /** As near to this elevation (m) as it goes. */
  public Reached to(double elevation) {
    long wanted = Math.round((elevation - handle.base()) / STEP);
    Reached there = trial(wanted);
    return there.limit().isEmpty() ? there : nearest(wanted, there.limit());
  }

  /** So many millimetres up. */
  public Reached by(int millimetres) {
    return to(handle.elevation() + millimetres * STEP);
  }

  private Reached trial(long steps) {
    double elevation = handle.base() + steps * STEP;
    Installation next = Heights.set(before, handle, elevation);
    return new Reached(next, elevation, soundness.newErrors(next));
  }

  /** Halves the way between where it was, which is sound, and where it must not go. */
  private Reached nearest(long wanted, List<Finding> why) {
    long sound = Math.round((handle.elevation() - handle.base()) / STEP);
    long unsound = wanted;
    Reached best = new Reached(before, handle.elevation(), why);
    while (Math.abs(unsound - sound) > 1) {
      long middle = sound + (unsound - sound) / 2;
      Reached trial = trial(middle);
      if (trial.limit().isEmpty()) {
        sound = middle;
        best = new Reached(trial.drawing(), trial.elevation(), why);
      } else {
        unsound = middle;
      }
    }
    return best;
  }
}
