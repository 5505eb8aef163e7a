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
  private static final double RELATIVE = 1e-14;

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
   * The flow (m³/s) at a head between the ends (m).
   *
   * @param movingLoss coefficient of valves that move by themselves (velocity heads)
   * @param guess a flow near the answer, which saves time and changes nothing
   */
  public double flow(double head, double movingLoss, double guess) {
    return switch (passage) {
      case BLOCKED -> 0;
      case BOTH_WAYS -> solve(head, movingLoss, guess);
      case FORWARD_ONLY -> {
        double spare = head - headFor(0, movingLoss) - crackingHead;
        if (spare > 0) {
          yield Math.max(0, solve(head - crackingHead, movingLoss, Math.max(guess, 0)));
        }
        yield leakArea > 0 && spare + crackingHead < 0
            ? Orifice.flow(Orifice.CRACK, leakArea, spare + crackingHead)
            : 0;
      }
    };
  }

  /** Slope of {@link #flow} (m²/s) where the flow is already known; 0 where nothing passes. */
  public double flowPerHead(double head, double flow, double movingLoss) {
    return switch (passage) {
      case BLOCKED -> 0;
      case BOTH_WAYS -> 1 / headPerFlow(flow, movingLoss);
      case FORWARD_ONLY -> {
        if (flow > 0) {
          yield 1 / headPerFlow(flow, movingLoss);
        }
        double spare = head - headFor(0, movingLoss);
        yield leakArea > 0 && spare < 0 ? Orifice.flowPerHead(Orifice.CRACK, leakArea, spare) : 0;
      }
    };
  }

  /**
   * Newton's method, kept between bounds that close in; the head is strictly rising in the flow.
   */
  private double solve(double head, double movingLoss, double guess) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double flow = guess;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double miss = headFor(flow, movingLoss) - head;
      if (miss == 0) {
        return flow;
      }
      if (miss > 0) {
        high = flow;
      } else {
        low = flow;
      }
      double step = -miss / headPerFlow(flow, movingLoss);
      double next = flow + step;
      if (!(next > low && next < high)) {
        next = between(low, high, flow);
      }
      if (Math.abs(next - flow) <= RELATIVE * Math.abs(flow) + 1e-18) {
        return next;
      }
      flow = next;
    }
    return flow;
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
