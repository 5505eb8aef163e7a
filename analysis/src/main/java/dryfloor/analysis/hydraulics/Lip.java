package dryfloor.analysis.hydraulics;

/**
 * Flow into the open end of an upright pipe, or over the edge of a round opening in a floor: at
 * first the lip is a ring weir, then the mouth is an orifice, and the least of the two governs.
 *
 * <pre>Q = least of  1.84 · π D · h^1.5  and  0.61 · (π/4) D² · √(2 g h)</pre>
 *
 * <p>Drop-inlet practice, as for shaft spillways (US Bureau of Reclamation, Design of Small Dams,
 * from memory): weir, then orifice, then full pipe. The third is the pipe's own loss, {@link
 * PipeLoss}. 1.84 √m/s is Francis's constant in SI units (Encyclopaedia Britannica, Hydraulics,
 * weirs), 0.61 the sharp-edged hole. They meet at h = 0.367 D, where a gentle transition takes
 * place in nature and a vortex may draw air; no measured curve of a small upright overflow was
 * found.
 *
 * <p>Dirt that leaves free a share of the opening leaves that share of both: of the edge and of the
 * area. The jet falls into air behind it, so none of its velocity head is won back, as it would be
 * in a full pipe (common practice for clogged grates: a share of perimeter and area).
 */
public final class Lip {

  private static final double FRANCIS = 1.84;

  private Lip() {}

  /**
   * Flow, m³/s; 0 where the head is 0 or below.
   *
   * @param head of the water above the lip, m
   * @param diameter of the opening, m
   */
  public static double flow(double head, double diameter) {
    return head <= 0.0 ? 0.0 : Math.min(ringWeir(head, diameter), orifice(head, diameter));
  }

  /**
   * Flow past dirt, m³/s; 0 where the head is 0 or below.
   *
   * @param head of the water above the lip, m
   * @param diameter of the opening, m
   * @param free share of the opening that is free, above 0, at most 1
   */
  public static double flow(double head, double diameter, double free) {
    return free * flow(head, diameter);
  }

  /**
   * The slope of {@link #flow}: d flow / d head, m²/s; it falls to a third where the weir hands
   * over to the orifice.
   *
   * @param head of the water above the lip, m
   * @param diameter of the opening, m
   */
  public static double flowPerHead(double head, double diameter) {
    if (head <= 0.0) {
      return 0.0;
    }
    double ring = ringWeir(head, diameter);
    return ring <= orifice(head, diameter)
        ? 1.5 * ring / head
        : Orifice.flowPerHead(Orifice.SHARP, Physical.areaOfBore(diameter), head);
  }

  /**
   * The slope past dirt, m²/s.
   *
   * @param head of the water above the lip, m
   * @param diameter of the opening, m
   * @param free share of the opening that is free, above 0, at most 1
   */
  public static double flowPerHead(double head, double diameter, double free) {
    return free * flowPerHead(head, diameter);
  }

  private static double ringWeir(double head, double diameter) {
    return FRANCIS * Math.PI * diameter * head * Math.sqrt(head);
  }

  private static double orifice(double head, double diameter) {
    return Orifice.flow(Orifice.SHARP, Physical.areaOfBore(diameter), head);
  }
}
