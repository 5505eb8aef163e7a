package dryfloor.analysis.plain;

import dryfloor.model.element.Fitting;
import dryfloor.model.part.Part.Pump.CurvePoint;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The laws as the design names them, SI units, each in its plainest form. */
final class Laws {

  static final double G = 9.80665;

  /** Sharp-edged hole. */
  static final double HOLE = 0.61;

  /** Of whatever is sought: a head (m), a flow (m³/s), a volume (m³). */
  private static final double NOTHING = 1e-12;

  private Laws() {}

  /**
   * Where a function that falls with its argument becomes zero, between two bounds: where the chord
   * between them does, again and again. The value at an end that stays twice is halved (the old
   * rule of Illinois), and where three rounds have not brought the bounds together to an eighth,
   * they are halved, so that it ends where bisection does.
   */
  static double zero(DoubleUnaryOperator falling, double low, double high) {
    return zero(falling, low, falling.applyAsDouble(low), high, falling.applyAsDouble(high));
  }

  private static double zero(
      DoubleUnaryOperator falling, double low, double atLow, double high, double atHigh) {
    if (atLow <= 0 || atHigh > 0) {
      return atLow <= 0 ? low : high;
    }
    double below = low;
    double above = high;
    double atBelow = atLow;
    double atAbove = atHigh;
    boolean movedBelow = false;
    boolean movedAbove = false;
    double widthBefore = above - below;
    for (int i = 1; i < 180 && above - below > 1e-12 * (Math.abs(above) + 1e-9); i++) {
      double chord = below + (above - below) * atBelow / (atBelow - atAbove);
      boolean isSlow = i % 3 == 0 && above - below > widthBefore / 8;
      widthBefore = i % 3 == 0 ? above - below : widthBefore;
      double at = isSlow || chord <= below || chord >= above ? (below + above) / 2 : chord;
      double value = falling.applyAsDouble(at);
      if (Math.abs(value) < NOTHING) {
        return at;
      }
      if (value > 0) {
        below = at;
        atBelow = value;
        atAbove /= movedBelow ? 2 : 1;
      } else {
        above = at;
        atAbove = value;
        atBelow /= movedAbove ? 2 : 1;
      }
      movedBelow = value > 0;
      movedAbove = value < 0;
    }
    return (below + above) / 2;
  }

  /** The same, looked for near a guess first, to save time. */
  static double zeroNear(
      DoubleUnaryOperator falling, double guess, double reach, double low, double high) {
    double start = Math.clamp(guess, low, high);
    double atStart = falling.applyAsDouble(start);
    if (Math.abs(atStart) < NOTHING) {
      return start;
    }
    return atStart > 0
        ? zeroAbove(falling, start, atStart, reach, high)
        : zeroBelow(falling, start, atStart, reach, low);
  }

  private static double zeroAbove(
      DoubleUnaryOperator falling, double start, double atStart, double reach, double high) {
    double below = start;
    double atBelow = atStart;
    double width = reach;
    double above = Math.min(high, below + width);
    double atAbove = falling.applyAsDouble(above);
    while (above < high && atAbove > 0) {
      below = above;
      atBelow = atAbove;
      width *= 8;
      above = Math.min(high, above + width);
      atAbove = falling.applyAsDouble(above);
    }
    return zero(falling, below, atBelow, above, atAbove);
  }

  private static double zeroBelow(
      DoubleUnaryOperator falling, double start, double atStart, double reach, double low) {
    double above = start;
    double atAbove = atStart;
    double width = reach;
    double below = Math.max(low, above - width);
    double atBelow = falling.applyAsDouble(below);
    while (below > low && atBelow <= 0) {
      above = below;
      atAbove = atBelow;
      width *= 8;
      below = Math.max(low, below - width);
      atBelow = falling.applyAsDouble(below);
    }
    return zero(falling, below, atBelow, above, atAbove);
  }

  /** Churchill 1977. */
  static double friction(double reynolds, double relativeRoughness) {
    double root = 2.457 * Math.log(1 / (Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness));
    double both = power16(root) + power16(37530 / reynolds);
    double eight = 8 / reynolds;
    double laminar = power16(eight) / (eight * eight * eight * eight);
    return 8 * Math.sqrt(Math.sqrt(Math.cbrt(laminar + 1 / (both * Math.sqrt(both)))));
  }

  private static double power16(double x) {
    double power4 = x * x * x * x;
    return power4 * power4 * power4 * power4;
  }

  /** Darcy and Weisbach with fittings; head for a flow of zero or more. */
  static double pipeLoss(
      double flow, double bore, double length, double roughness, double k, double viscosity) {
    double velocity = flow / (Math.PI / 4 * bore * bore);
    double reynolds = velocity * bore / viscosity;
    if (reynolds < 1) {
      return 32 * viscosity * length * velocity / (G * bore * bore)
          + k * velocity * velocity / (2 * G);
    }
    return (friction(reynolds, roughness / bore) * length / bore + k)
        * velocity
        * velocity
        / (2 * G);
  }

  /** IEC 60534: flow in m³/h that loses 1 bar. */
  static double valveLoss(double flow, double kv) {
    double share = flow * 3600 / kv;
    return share * share * 1e5 / (1000 * G);
  }

  /** Torricelli. */
  static double hole(double area, double head) {
    return HOLE * area * Math.sqrt(2 * G * Math.max(0, head));
  }

  /** Poleni with Rehbock's coefficient up to h/P = 2, drowned by Villemonte (at last a line). */
  static double weir(double upstream, double downstream, double length, double crestHeight) {
    if (upstream <= 0 || upstream <= downstream) {
      return 0;
    }
    double ratio = crestHeight > 0 ? Math.min(2.25, upstream / crestHeight) : 2.25;
    double free =
        2.0 / 3 * (0.602 + 0.083 * ratio) * Math.sqrt(2 * G) * length * Math.pow(upstream, 1.5);
    if (downstream <= 0) {
      return free;
    }
    double fall = 1 - Math.pow(downstream / upstream, 1.5);
    double least = 1e-3;
    return free * (fall > least ? Math.pow(fall, 0.385) : Math.pow(least, 0.385) * fall / least);
  }

  /** The mouth of a pipe: ring weir or orifice, whichever lets less through. */
  static double lip(double head, double bore) {
    if (head <= 0) {
      return 0;
    }
    return Math.min(
        1.84 * Math.PI * bore * Math.pow(head, 1.5), hole(Math.PI / 4 * bore * bore, head));
  }

  /** Head of a pump: monotone cubic through the maker's points. */
  static double pumpHead(List<CurvePoint> curve, double flow) {
    int n = curve.size();
    double[] slope = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double before = chord(curve, i - 1);
      double after = chord(curve, i);
      double h0 = curve.get(i).flow() - curve.get(i - 1).flow();
      double h1 = curve.get(i + 1).flow() - curve.get(i).flow();
      slope[i] = 3 * (h0 + h1) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after);
    }
    slope[0] = n == 2 ? chord(curve, 0) : endSlope(chord(curve, 0), slope[1]);
    slope[n - 1] = n == 2 ? chord(curve, 0) : endSlope(chord(curve, n - 2), slope[n - 2]);
    CurvePoint first = curve.getFirst();
    CurvePoint last = curve.getLast();
    if (flow <= first.flow()) {
      double driven = (flow - first.flow()) / last.flow();
      return first.head() + slope[0] * (flow - first.flow()) + first.head() * driven * driven;
    }
    if (flow >= last.flow()) {
      double over = (flow - last.flow()) / last.flow();
      return last.head() + slope[n - 1] * (flow - last.flow()) - first.head() * over * over;
    }
    int i = 0;
    while (flow > curve.get(i + 1).flow()) {
      i++;
    }
    double h = curve.get(i + 1).flow() - curve.get(i).flow();
    double t = (flow - curve.get(i).flow()) / h;
    return curve.get(i).head() * (1 + 2 * t) * (1 - t) * (1 - t)
        + slope[i] * h * t * (1 - t) * (1 - t)
        + curve.get(i + 1).head() * t * t * (3 - 2 * t)
        + slope[i + 1] * h * t * t * (t - 1);
  }

  private static double chord(List<CurvePoint> curve, int i) {
    return (curve.get(i + 1).head() - curve.get(i).head())
        / (curve.get(i + 1).flow() - curve.get(i).flow());
  }

  /** The last stretch is a parabola, kept from running level or plunging. */
  private static double endSlope(double chord, double inner) {
    return Math.clamp(2 * chord - inner, 2.5 * chord, 1e-3 * chord);
  }

  /** Loss coefficients of the handbook table. */
  static double lossOf(Fitting fitting) {
    return switch (fitting) {
      case ELBOW_90 -> 0.9;
      case LONG_BEND_90 -> 0.6;
      case ELBOW_45 -> 0.4;
      case RETURN_BEND_180 -> 1.5;
      case TEE_THROUGH -> 0.6;
      case TEE_BRANCH -> 1.8;
      case UNION -> 0.08;
      case SHARP_ENTRANCE -> 0.5;
      case ROUNDED_ENTRANCE -> 0.04;
      case PROTRUDING_ENTRANCE -> 0.78;
      case EXIT -> 1;
      case GATE_VALVE_OPEN -> 0.15;
      case BALL_VALVE_OPEN -> 0.05;
      case BUTTERFLY_VALVE_OPEN -> 1;
      case FOOT_VALVE -> 15;
    };
  }

  /** EOS-80 at one atmosphere (kg/m³). */
  static double density(double t, double s) {
    double fresh =
        999.842594
            + t
                * (6.793952e-2
                    + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    double a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    return fresh + a * s + b * Math.pow(s, 1.5) + 4.8314e-4 * s * s;
  }

  /** Sharqawy, Lienhard and Zubair 2010, kinematic (m²/s). */
  static double viscosity(double t, double s) {
    double share = s / 1000;
    double fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
    double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
    double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
    return fresh * (1 + a * share + b * share * share) / density(t, s);
  }
}
