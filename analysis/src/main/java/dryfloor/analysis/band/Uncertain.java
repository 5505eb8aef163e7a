package dryfloor.analysis.band;

import dryfloor.model.Installation;

/** An installation of which some values are known within limits only. */
public interface Uncertain {

  /** How many values that are. */
  int values();

  /**
   * The installation with these values somewhere between their ends.
   *
   * @throws NotDrawable if it can't be built with these together
   */
  Installation at(Point point) throws NotDrawable;

  /** Says what is wrong with a drawing at some ends together. */
  final class NotDrawable extends Exception {

    private static final long serialVersionUID = 1;

    /** For this reason. */
    public NotDrawable(String reason) {
      super(reason);
    }
  }
}
