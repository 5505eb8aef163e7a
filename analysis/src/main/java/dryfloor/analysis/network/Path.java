package dryfloor.analysis.network;

/**
 * A way that water takes from place to place by itself, without a pipe. Indices are those of
 * places; {@code slot} is the ledger's account.
 */
public sealed interface Path {

  int from();

  int to();

  int slot();

  /**
   * An edge that water passes in either direction: teeth, baffle, rim, sill.
   *
   * @param crest elevation of the edge (m)
   * @param length of the edge (m)
   * @param heightFrom of the crest above the bottom on the first side (m)
   * @param heightTo of the crest above the bottom on the second side (m)
   */
  record Edge(
      int from, int to, int slot, double crest, double length, double heightFrom, double heightTo)
      implements Path {}

  /** A hole in a wall, {@code area} in m² at {@code elevation} (m). */
  record Hole(int from, int to, int slot, double elevation, double area) implements Path {}

  /**
   * Water thrown out by a pump, {@code flow} in m³/s until the level falls to {@code downTo} (m).
   *
   * @param part index of the powered part that throws
   */
  record Thrown(int from, int to, int slot, double downTo, double flow, int part) implements Path {}

  /**
   * A device that takes up its water when its pump starts and gives it back when it stops or finds
   * no water any more.
   *
   * @param from place the water comes from and returns to; where its run ends now if it has come
   *     apart before the device
   * @param to the device
   * @param holds water that it keeps while it runs (m³)
   * @param part index of the pump that feeds it, or -1 if none does any more
   * @param inlet where that pump sucks
   * @param bore of its run (m)
   */
  record Held(int from, int to, int slot, double holds, int part, PipeEnd inlet, double bore)
      implements Path {

    public boolean isFed() {
      return part >= 0;
    }
  }

  /**
   * A hole in a pipe, at a junction made for it.
   *
   * @param from the tee at the hole
   * @param to where its water lands
   * @param junction index of the junction
   * @param elevation of the hole (m)
   * @param area of the hole (m²)
   */
  record PipeHole(int from, int to, int slot, int junction, double elevation, double area)
      implements Path {}
}
