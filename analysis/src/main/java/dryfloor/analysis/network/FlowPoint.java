package dryfloor.analysis.network;

/**
 * A point on the curve of flow over head. A solver keeps one for each branch and hands it in again:
 * near the last answer the next one is found sooner.
 */
public final class FlowPoint {

  /** Flow (m³/s). */
  public double flow;

  /** Slope of the flow by the head (m²/s); 0 where nothing passes. */
  public double flowPerHead;
}
