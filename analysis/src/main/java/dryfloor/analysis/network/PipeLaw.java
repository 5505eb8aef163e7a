package dryfloor.analysis.network;

import dryfloor.analysis.hydraulics.Orifice;
import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.hydraulics.PipeResistance;
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
 * @param resistance of the pipe itself
 * @param loss coefficient of all fittings and valves that do not move by themselves (velocity
 *     heads)
 * @param pumps running in the stretch, one behind the other
 * @param supplyHead head that a limited supply loses at its greatest flow (m); 0 for none
 * @param supplyFlow greatest flow of that supply (m³/s)
 * @param passage which way water can go
 * @param crackingHead head at which the check valves open (m)
 * @param leakArea through which closed check valves leak back (m²)
 */
@NullMarked
public record PipeLaw(
    PipeResistance resistance,
    double loss,
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

  /** Head (m) from which on flow goes with its root. */
  private static final double SOFT = 1e-4;

  private static final int MOST_ITERATIONS = 200;

  /**
   * The last step is shorter than this share of the flow. Newton's method squares it, so that the
   * flow is then right to rounding.
   */
  private static final double NEAR = 1e-8;

  /** What heads of some metres can't resolve any more, and no water either (m³/s). */
  private static final double NOTHING = 1e-16;

  /** Head (m) that the stretch needs between its ends to pass a flow (m³/s). */
  public double headFor(double flow, double movingLoss) {
    double head = resistance.head(flow, loss + movingLoss);
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
    double slope = resistance.headPerFlow(flow, loss + movingLoss);
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
      case BOTH_WAYS -> pass(head, movingLoss, point);
      case FORWARD_ONLY -> {
        double spare = head - headFor(0, movingLoss);
        if (spare > crackingHead) {
          point.flow = Math.max(point.flow, 0);
          pass(head - crackingHead, movingLoss, point);
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
   * The flow at a head that drives it. Without a pump flow goes with about the root of the head,
   * which is infinitely steep at rest; below {@link #SOFT} it goes over into a straight line
   * instead, so that water which levels out dies away. One millimetre of head drives a quarter per
   * cent less for that, ten millimetres nothing that shows.
   */
  private void pass(double head, double movingLoss, FlowPoint point) {
    if (!pumps.isEmpty()) {
      search(head, movingLoss, point);
      return;
    }
    double blunt = Math.sqrt(head * head + SOFT * SOFT);
    double share = head / blunt;
    point.flow =
        Math.abs(head) > SOFT ? point.flow / share : Math.max(point.flowPerHead, 0) * blunt;
    search(blunt, movingLoss, point);
    double full = point.flow;
    point.flow = full * share;
    point.flowPerHead =
        point.flowPerHead * share * share + full * SOFT * SOFT / (blunt * blunt * blunt);
  }

  /**
   * Newton's method, kept between bounds that close in; the head is strictly rising in the flow.
   * Near a good guess it takes one or two heads. The slope handed back is that where the last step
   * began, which is within {@link #NEAR} of its end.
   */
  private void search(double head, double movingLoss, FlowPoint point) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double flow = point.flow;
    double slope = headPerFlow(flow, movingLoss);
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double miss = headFor(flow, movingLoss) - head;
      slope = headPerFlow(flow, movingLoss);
      if (miss > 0) {
        high = flow;
      } else {
        low = flow;
      }
      double step = miss / slope;
      double next = flow - step;
      if (Math.abs(step) <= NEAR * Math.abs(flow) + NOTHING) {
        flow = next;
        break;
      }
      flow = next > low && next < high ? next : between(low, high, flow);
    }
    point.flow = flow;
    point.flowPerHead = 1 / slope;
  }

  private double between(double low, double high, double flow) {
    double reach =
        Math.max(Math.abs(flow), Physical.GRAVITY * 1e-3 * resistance.bore() * resistance.bore());
    if (high == Double.POSITIVE_INFINITY) {
      return flow + 2 * reach;
    }
    if (low == Double.NEGATIVE_INFINITY) {
      return flow - 2 * reach;
    }
    return (low + high) / 2;
  }
}
