package dryfloor.analysis.network;

import java.util.List;

/**
 * A run, or what is left of one, compiled: two legs that meet at its crest.
 *
 * @param run id of the run in the drawing
 * @param legs on the first and on the second side of the crest
 * @param bore inside diameter (m)
 * @param length (m)
 * @param roughness (m)
 * @param viscosity kinematic viscosity of its water (m²/s)
 * @param bends points of its profile in order, both ends included
 * @param crest elevation of its highest point (m)
 * @param crestAlong how far that is along it (m)
 * @param entranceLoss where water enters it from open water at either end (velocity heads)
 * @param spreadLoss fittings spread evenly along it (velocity heads)
 * @param supplyHead head that a limited supply at its first end loses at its greatest flow (m)
 * @param supplyFlow greatest flow of that supply (m³/s)
 * @param fixtures in order
 * @param vented whether its crest is open to the air at all times
 * @param primesEarly whether water that falls in over a lip fills it as soon as it can
 * @param startsFull whether it stands full of water in normal operation if it can
 * @param firstSlot index of the first of its accounts
 * @param cutFrom where the first end lies along the run of the drawing (m)
 */
public record Pipe(
    String run,
    List<Leg> legs,
    double bore,
    double length,
    double roughness,
    double viscosity,
    List<Bend> bends,
    double crest,
    double crestAlong,
    double entranceLoss,
    double spreadLoss,
    double supplyHead,
    double supplyFlow,
    List<PipeFixture> fixtures,
    boolean vented,
    boolean primesEarly,
    boolean startsFull,
    int firstSlot,
    double cutFrom) {

  /** A leg that holds less than this is no leg (m³). */
  private static final double NO_LEG = 1e-7;

  /**
   * The pipe from one end to the crest.
   *
   * @param end where it opens
   * @param column index of the place for water that stands in it
   * @param volume that it holds when full (m³)
   * @param endLoss there: an entrance at the first end, an exit at the second, nothing at a
   *     junction, whichever way the water goes (velocity heads)
   */
  public record Leg(PipeEnd end, int column, double volume, double endLoss) {

    /** Whether it holds so little that it is left out. */
    public boolean negligible() {
      return volume < NO_LEG;
    }
  }

  /**
   * A point of the profile.
   *
   * @param along distance from the first end (m)
   * @param elevation (m)
   */
  public record Bend(double along, double elevation) {}

  public Pipe {
    bends = List.copyOf(bends);
    legs = List.copyOf(legs);
    fixtures = List.copyOf(fixtures);
  }

  /** Account for water between both ends; positive from first to second. */
  public int throughSlot() {
    return firstSlot;
  }

  /** Account for water between an end and the column on its own side. */
  public int ownColumnSlot(int side) {
    return firstSlot + 1 + side;
  }

  /** Account for water from an end over the crest into the column on the other side. */
  public int farColumnSlot(int side) {
    return firstSlot + 3 + side;
  }

  /** Elevation (m) of the pipe so far along it (m). */
  public double elevationAt(double along) {
    for (int i = 1; i < bends.size(); i++) {
      Bend before = bends.get(i - 1);
      Bend after = bends.get(i);
      if (along <= after.along()) {
        double run = after.along() - before.along();
        double share = run > 0 ? Math.max(along - before.along(), 0) / run : 0;
        return before.elevation() + share * (after.elevation() - before.elevation());
      }
    }
    return bends.getLast().elevation();
  }

  public Leg leg(int side) {
    return legs.get(side);
  }

  /** Cross-section (m²). */
  public double area() {
    return Math.PI / 4 * bore * bore;
  }
}
