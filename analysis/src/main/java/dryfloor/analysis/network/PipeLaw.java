package dryfloor.analysis.network;

import dryfloor.analysis.hydraulics.Orifice;
import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.hydraulics.PipeLoss;
import dryfloor.analysis.hydraulics.PumpCurve;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/**
 * The flow through a stretch of pipe filled with water, as a function of the head between its ends.
 *
 * <p>Friction, fittings, valves, running pumps and the droop of a supply add up to a head that
 * rises strictly with the flow, so each head has one flow. Positive flow goes from the first end to
 * the second.
 *
 * @param bore inside diameter (m)
 * @param length of pipe (m)
 * @param roughness of its wall (m)
 * @param loss coefficient of all fittings and valves that do not move by themselves (velocity
 *     heads)
 * @param viscosity kinematic (m²/s)
 * @param pumps running in the stretch, one behind the other
 * @param supplyHead head that a limited supply loses at its greatest flow (m); 0 for none
 * @param supplyFlow greatest flow of that supply (m³/s)
 * @param passage which way water can go
 * @param crackingHead head at which the check valves open (m)
 * @param leakArea through which closed check valves leak back (m²)
 */
@NullMarked
public record PipeLaw(
    double bore,
    double length,
    double roughness,
    double loss,
    double viscosity,
    List<PumpCurve> pumps,
    double supplyHead,
    double supplyFlow,
    Passage passage,
    double crackingHead,
    double leakArea) {

  /** Which way water can go. */
  public enum Passage {
    BOTH_WAYS,
    FORWARD_ONLY,
    BLOCKED
  }

  private static final int MOST_ITERATIONS = 200;

  /** Flows are solved to this share of themselves. */
  private static final double RELATIVE = 1e-13;

  /** What heads of some metres can't resolve any more, and no water either (m³/s). */
  private static final double NOTHING = 1e-16;

  /** Head (m) that the stretch needs between its ends to pass a flow (m³/s). */
  public double headFor(double flow, double movingLoss) {
    double head = PipeLoss.head(flow, bore, length, roughness, loss + movingLoss, viscosity);
    for (int i = 0; i < pumps.size(); i++) {
      head -= pumps.get(i).head(flow);
    }
    if (supplyHead > 0) {
      head += supplyHead * flow * Math.abs(flow) / (supplyFlow * supplyFlow);
    }
    return head;
  }

  /** Slope of {@link #headFor} (s/m²), always positive. */
  public double headPerFlow(double flow, double movingLoss) {
    double slope =
        PipeLoss.headPerFlow(flow, bore, length, roughness, loss + movingLoss, viscosity);
    for (int i = 0; i < pumps.size(); i++) {
      slope -= pumps.get(i).headPerFlow(flow);
    }
    if (supplyHead > 0) {
      slope += 2 * supplyHead * Math.abs(flow) / (supplyFlow * supplyFlow);
    }
    return slope;
  }

  /**
   * Finds the flow at a head between the ends (m).
   *
   * @param movingLoss coefficient of valves that move by themselves (velocity heads)
   * @param point holds a guess of flow and slope, which saves time and changes nothing, and takes
   *     the answer
   */
  public void solve(double head, double movingLoss, FlowPoint point) {
    switch (passage) {
      case BLOCKED -> stop(point);
      case BOTH_WAYS -> search(head, movingLoss, point);
      case FORWARD_ONLY -> {
        double spare = head - headFor(0, movingLoss);
        if (spare > crackingHead) {
          point.flow = Math.max(point.flow, 0);
          search(head - crackingHead, movingLoss, point);
        } else if (leakArea > 0 && spare < 0) {
          point.flow = Orifice.flow(Orifice.CRACK, leakArea, spare);
          point.flowPerHead = Orifice.flowPerHead(Orifice.CRACK, leakArea, spare);
        } else {
          stop(point);
        }
      }
    }
  }

  private static void stop(FlowPoint point) {
    point.flow = 0;
    point.flowPerHead = 0;
  }

  /**
   * Secants, kept between bounds that close in; the head is strictly rising in the flow. Near a
   * good guess it takes two or three heads. The slope handed back is that of the last secant.
   */
  private void search(double head, double movingLoss, FlowPoint point) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double flow = point.flow;
    double miss = headFor(flow, movingLoss) - head;
    double slope = point.flowPerHead > 0 ? 1 / point.flowPerHead : headPerFlow(flow, movingLoss);
    for (int i = 0; i < MOST_ITERATIONS && miss != 0; i++) {
      if (miss > 0) {
        high = flow;
      } else {
        low = flow;
      }
      double next = flow - miss / slope;
      if (!(next > low && next < high)) {
        next = between(low, high, flow);
      }
      if (Math.abs(next - flow) <= RELATIVE * Math.abs(flow) + NOTHING) {
        flow = next;
        break;
      }
      double nextMiss = headFor(next, movingLoss) - head;
      double secant = (nextMiss - miss) / (next - flow);
      boolean slow = Math.abs(nextMiss) > 0.5 * Math.abs(miss) || !(secant > 0);
      slope = slow ? headPerFlow(next, movingLoss) : secant;
      flow = next;
      miss = nextMiss;
    }
    point.flow = flow;
    point.flowPerHead = 1 / slope;
  }

  private double between(double low, double high, double flow) {
    double reach = Math.max(Math.abs(flow), Physical.GRAVITY * 1e-3 * bore * bore);
    if (high == Double.POSITIVE_INFINITY) {
      return flow + 2 * reach;
    }
    if (low == Double.NEGATIVE_INFINITY) {
      return flow - 2 * reach;
    }
    return (low + high) / 2;
  }
}
