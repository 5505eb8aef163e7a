package dryfloor.analysis.hydraulics;

/**
 * Flow over a thin edge: rim, baffle, teeth, overflow.
 *
 * <pre>
 * Q = 2/3 · Cd · √(2g) · b · h^1.5          Cd = 0.602 + 0.083 h/P
 * </pre>
 *
 * <p>Cd after Rehbock as in ISO 1438 (from memory), h the head above the crest well upstream, P the
 * height of the crest above the floor there. Rehbock adds 1.1 mm to h for surface tension; that is
 * left out so that flow starts at 0: below about 30 mm of head the true flow over a clean metal
 * edge is greater (by Rehbock 17 % at 10 mm); where water clings to the edge the first millimetre
 * or two may not pass at all (common practice).
 *
 * <p>Published range: h/P up to about 2 in the kindred form of Ackers and others (1978). Up to 2
 * the coefficient is Rehbock's, beyond it levels off smoothly to its value at 2.5.
 *
 * <p>Water standing above the crest downstream drowns the weir: Villemonte, Engineering
 * News-Record, 25 December 1947, p. 866. His law has an infinite slope where both levels meet; over
 * the last part, 1 − (h₂/h₁)^1.5 about 0.001, it turns smoothly into a straight line.
 */
public final class Weir {

  private static final double POLENI = 2.0 / 3.0 * Math.sqrt(2.0 * Physical.GRAVITY);
  private static final double AT_REST = 0.602;
  private static final double PER_HEAD_RATIO = 0.083;
  private static final double REHBOCK_UP_TO = 2.0;
  private static final double LEVELS_OFF_WITHIN = 0.5;
  private static final double VILLEMONTE = 0.385;

  /** Around this free part the power turns smoothly into a straight line through 0. */
  private static final double SMALL = 1e-3;

  /**
   * That part grows where the water over the crest is no deeper than some of these (m): no sheet
   * falls over an edge there, and Villemonte measured nothing.
   */
  private static final double FILM = 1e-4;

  private Weir() {}

  /**
   * Flow over a weir that falls free, m³/s; 0 where the head is 0 or below.
   *
   * @param head of the water above the crest, m
   * @param length of the crest, m
   * @param crestHeight of the crest above the floor of the upstream vessel, m; 0 or below is taken
   *     as a crest at the floor
   */
  public static double flow(double head, double length, double crestHeight) {
    return head <= 0.0
        ? 0.0
        : withCoefficient(AT_REST + PER_HEAD_RATIO * ratio(head, crestHeight), head, length);
  }

  /**
   * The slope of {@link #flow}: d flow / d head, m²/s; 0 at the crest and below.
   *
   * @param head of the water above the crest, m
   * @param length of the crest, m
   * @param crestHeight of the crest above the floor of the upstream vessel, m
   */
  public static double flowPerHead(double head, double length, double crestHeight) {
    if (head <= 0.0) {
      return 0.0;
    }
    double coefficient = AT_REST + PER_HEAD_RATIO * ratio(head, crestHeight);
    double coefficientSlope = PER_HEAD_RATIO * ratioSlope(head, crestHeight);
    return POLENI * length * Math.sqrt(head) * (1.5 * coefficient + coefficientSlope * head);
  }

  /**
   * Poleni's law with a coefficient of one's own, m³/s; 0 where the head is 0 or below.
   *
   * @param coefficient discharge coefficient Cd, about 0.6 for a thin edge
   * @param head of the water above the crest, m
   * @param length of the crest, m
   */
  public static double withCoefficient(double coefficient, double head, double length) {
    return head <= 0.0 ? 0.0 : POLENI * coefficient * length * head * Math.sqrt(head);
  }

  /**
   * Villemonte's factor by which water standing above the crest downstream reduces the flow: 1
   * where it stands at or below the crest, 0 where it stands as high as upstream or higher.
   *
   * @param upstreamHead m above the crest
   * @param downstreamHead m above the crest
   */
  public static double drowning(double upstreamHead, double downstreamHead) {
    if (downstreamHead <= 0.0) {
      return 1.0;
    }
    if (downstreamHead >= upstreamHead) {
      return 0.0;
    }
    double free = freePart(upstreamHead, downstreamHead);
    double small = smallSquared(upstreamHead);
    return free * Math.pow((1.0 + small) / (free * free + small), (1.0 - VILLEMONTE) / 2.0);
  }

  private static double smallSquared(double upstreamHead) {
    double film = FILM / upstreamHead;
    return SMALL * SMALL + film * film;
  }

  /**
   * Flow from the higher to the lower side, m³/s, free or drowned; 0 where the downstream side is
   * the higher one.
   *
   * @param upstreamHead m above the crest
   * @param downstreamHead m above the crest, at or below it for a weir that falls free
   * @param length of the crest, m
   * @param crestHeight of the crest above the floor of the upstream vessel, m
   */
  public static double drownedFlow(
      double upstreamHead, double downstreamHead, double length, double crestHeight) {
    return flow(upstreamHead, length, crestHeight) * drowning(upstreamHead, downstreamHead);
  }

  /**
   * d {@link #drownedFlow} / d upstreamHead, m²/s: 0 or more, finite also where both levels meet.
   *
   * @param upstreamHead m above the crest
   * @param downstreamHead m above the crest
   * @param length of the crest, m
   * @param crestHeight of the crest above the floor of the upstream vessel, m
   */
  public static double drownedFlowPerUpstreamHead(
      double upstreamHead, double downstreamHead, double length, double crestHeight) {
    if (upstreamHead <= 0.0) {
      return 0.0;
    }
    double free = flowPerHead(upstreamHead, length, crestHeight);
    if (downstreamHead <= 0.0) {
      return free;
    }
    double ratio = Math.min(1.0, downstreamHead / upstreamHead);
    double freePartSlope = 1.5 * ratio * Math.sqrt(ratio) / upstreamHead;
    double drowningSlope =
        drowningSlope(upstreamHead, downstreamHead) * freePartSlope
            + drowningPerFilm(upstreamHead, downstreamHead);
    return free * drowning(upstreamHead, downstreamHead)
        + flow(upstreamHead, length, crestHeight) * drowningSlope;
  }

  /**
   * d {@link #drownedFlow} / d downstreamHead, m²/s: 0 or less, finite also where both levels meet.
   *
   * @param upstreamHead m above the crest
   * @param downstreamHead m above the crest
   * @param length of the crest, m
   * @param crestHeight of the crest above the floor of the upstream vessel, m
   */
  public static double drownedFlowPerDownstreamHead(
      double upstreamHead, double downstreamHead, double length, double crestHeight) {
    if (upstreamHead <= 0.0 || downstreamHead <= 0.0) {
      return 0.0;
    }
    double ratio = Math.min(1.0, downstreamHead / upstreamHead);
    double freePartSlope = -1.5 * Math.sqrt(ratio) / upstreamHead;
    return flow(upstreamHead, length, crestHeight)
        * drowningSlope(upstreamHead, downstreamHead)
        * freePartSlope;
  }

  /** h/P, Rehbock's up to its range and then levelling off. */
  private static double ratio(double head, double crestHeight) {
    double ratio = crestHeight > 0.0 ? head / crestHeight : Double.POSITIVE_INFINITY;
    double beyond = ratio - REHBOCK_UP_TO;
    return beyond <= 0.0
        ? ratio
        : REHBOCK_UP_TO - LEVELS_OFF_WITHIN * Math.expm1(-beyond / LEVELS_OFF_WITHIN);
  }

  private static double ratioSlope(double head, double crestHeight) {
    if (crestHeight <= 0.0) {
      return 0.0;
    }
    double beyond = head / crestHeight - REHBOCK_UP_TO;
    return (beyond <= 0.0 ? 1.0 : Math.exp(-beyond / LEVELS_OFF_WITHIN)) / crestHeight;
  }

  private static double freePart(double upstreamHead, double downstreamHead) {
    double ratio = downstreamHead / upstreamHead;
    return Math.max(0.0, 1.0 - ratio * Math.sqrt(ratio));
  }

  /** d drowning / d free part. */
  private static double drowningSlope(double upstreamHead, double downstreamHead) {
    double free = freePart(upstreamHead, downstreamHead);
    double small = smallSquared(upstreamHead);
    double squares = free * free + small;
    return (VILLEMONTE * free * free + small)
        / squares
        * Math.pow((1.0 + small) / squares, (1.0 - VILLEMONTE) / 2.0);
  }

  /** d drowning / d upstreamHead by way of the film (1/m). */
  private static double drowningPerFilm(double upstreamHead, double downstreamHead) {
    double free = freePart(upstreamHead, downstreamHead);
    double small = smallSquared(upstreamHead);
    double perSmall =
        (1.0 - VILLEMONTE)
            / 2.0
            * drowning(upstreamHead, downstreamHead)
            * (1.0 / (1.0 + small) - 1.0 / (free * free + small));
    double film = FILM / upstreamHead;
    return perSmall * -2.0 * film * film / upstreamHead;
  }
}
