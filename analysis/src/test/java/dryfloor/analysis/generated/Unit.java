package dryfloor.analysis.generated;

/**
 * Something that moves or holds water by itself. Units of one building share floors, circuits and
 * the sewer, so that one's spill is another's flood.
 */
public sealed interface Unit
    permits Tank, Circle, Rack, Neighbours, FlushingTank, CyclingPit, Store, DeviceLoop, MixingVat {

  /** What it is, to be read in a sentence. */
  String sentence();

  /**
   * Draws it.
   *
   * @param prefix that no other unit's ids begin with
   */
  void draw(Site site, String prefix);

  /** Lengths are described in whole millimetres (to m), flows in mL/s, areas in dm². */
  static double mm(int millimetres) {
    return millimetres / 1000.0;
  }

  static double dm2(int squareDecimetres) {
    return squareDecimetres / 100.0;
  }
}
