package dryfloor.app.drawing;

/**
 * A vessel in the elevation (m).
 *
 * @param id of the vessel
 * @param left inside left wall at the rim
 * @param right inside right wall at the rim
 * @param taper how far each wall stands further in at the bottom (negative: further out)
 * @param bottom elevation of the inside bottom
 * @param rim elevation of the rim
 * @param leftTop where the left wall ends: the rim, or the edge to a neighbour
 * @param rightTop where the right wall ends
 * @param support elevation of what it stands on
 * @param depth how many vessels it stands in
 */
record Tank(
    String id,
    double left,
    double right,
    double taper,
    double bottom,
    double rim,
    double leftTop,
    double rightTop,
    double support,
    int depth) {

  double middle() {
    return (left + right) / 2;
  }

  double width() {
    return right - left;
  }

  double leftAt(double elevation) {
    return left + inset(elevation);
  }

  double rightAt(double elevation) {
    return right - inset(elevation);
  }

  private double inset(double elevation) {
    double share = Math.clamp((rim - elevation) / (rim - bottom), 0, 1);
    return taper * share;
  }
}
