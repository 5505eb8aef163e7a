package dryfloor.analysis.network;

/**
 * One end of a pipe.
 *
 * @param place index of the place it opens into; for a junction that of its tee
 * @param junction index of the junction, or -1
 * @param elevation of the opening (m)
 */
public record PipeEnd(int place, int junction, double elevation) {

  public boolean atJunction() {
    return junction >= 0;
  }
}
