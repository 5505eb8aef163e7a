package dryfloor.analysis.network;

/**
 * One end of a pipe.
 *
 * @param place index of the place it opens into; for a junction that of its tee
 * @param junction index of the junction, or -1
 * @param elevation of the opening (m)
 * @param lies whether it came loose and lies on the ground, its mouth to the side
 * @param loose whether it came loose
 */
public record PipeEnd(int place, int junction, double elevation, boolean lies, boolean loose) {

  static PipeEnd fixed(int place, double elevation) {
    return new PipeEnd(place, -1, elevation, false, false);
  }

  static PipeEnd at(int junction, Tee tee) {
    return new PipeEnd(tee.place(), junction, tee.elevation(), false, false);
  }

  public boolean atJunction() {
    return junction >= 0;
  }
}
