package dryfloor.analysis.reference;

import dryfloor.analysis.hydraulics.Fitting;
import dryfloor.analysis.hydraulics.Friction;
import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.hydraulics.PipeLoss;
import dryfloor.analysis.hydraulics.ValveLoss;

/**
 * What {@link Friction}, {@link PipeLoss}, {@link Fitting} and {@link ValveLoss} say. Where a
 * source takes a friction factor of its own, it is entered as a loss.
 */
final class PipeAnswers {

  /** For losses that do not depend on it: so thin that flow is turbulent. */
  private static final double THIN = 1e-8;

  private static final double FASTEST = 1e3;

  private PipeAnswers() {}

  static double area(double bore) {
    return Math.PI / 4.0 * bore * bore;
  }

  static double frictionFactor(Given given) {
    return Friction.factor(given.number("reynolds"), given.number("relativeRoughness"));
  }

  static double frictionFactorAtFlow(Given given) {
    double bore = given.number("bore_m");
    double velocity = given.number("flow_m3_per_s") / area(bore);
    double reynolds = velocity * bore / given.number("kinematicViscosity_m2_per_s");
    return Friction.factor(reynolds, given.number("roughness_m") / bore);
  }

  static double headLost(Given given) {
    return given.numberOrZero("lift_m") + Pipe.of(given).head(given.number("flow_m3_per_s"));
  }

  static double pressureLost(Given given) {
    double head = Pipe.of(given).head(given.number("flow_m3_per_s"));
    return head * given.number("density_kg_per_m3") * Physical.GRAVITY;
  }

  static double flowUnderHead(Given given) {
    return Pipe.of(given).flow(given.number("head_m"));
  }

  static double velocityUnderHead(Given given) {
    return flowUnderHead(given) / area(given.number("bore_m"));
  }

  static double boreForHead(Given given) {
    double flow = given.number("flow_m3_per_s");
    double length = given.number("length_m");
    double roughness = given.number("roughness_m");
    double viscosity = given.number("kinematicViscosity_m2_per_s");
    return 1.0
        / Search.whereRises(
            perBore -> PipeLoss.head(flow, 1.0 / perBore, length, roughness, 0.0, viscosity),
            given.number("head_m"),
            1.0,
            100.0);
  }

  /** The velocity heads differ, for the water leaves through an outlet narrower than the pipe. */
  static double pressureBelowRiser(Given given) {
    double flow = given.number("flow_m3_per_s");
    double bore = given.number("bore_m");
    double head =
        given.number("lift_m")
            + velocityHead(flow, given.number("outletBore_m"))
            - velocityHead(flow, bore)
            + Pipe.of(given).head(flow);
    return head * given.number("density_kg_per_m3") * Physical.GRAVITY;
  }

  /** That of an exit, which is the velocity head. */
  private static double velocityHead(double flow, double bore) {
    return PipeLoss.head(flow, bore, 0.0, 0.0, Fitting.EXIT.lossCoefficient(), THIN);
  }

  static double fittingLoss(Given given) {
    return given.oneOf(Fitting.class, "fitting").lossCoefficient();
  }

  static double valveLossCoefficient(Given given) {
    return ValveLoss.fittingsOf(given.number("kv_m3_per_h"), given.number("bore_m"));
  }

  static double kvOfCv(Given given) {
    return ValveLoss.kvFromCv(given.number("cv_US_gal_per_min"));
  }

  static double cvNeeded(Given given) {
    double flow = given.number("flow_m3_per_s");
    double head =
        given.number("pressureLost_Pa") / (given.number("density_kg_per_m3") * Physical.GRAVITY);
    return 1.0
        / Search.whereRises(
            perCv -> ValveLoss.head(flow, ValveLoss.kvFromCv(1.0 / perCv)), head, 1e-4, 1.0);
  }

  /**
   * A pipe running full.
   *
   * @param bore m
   * @param length m, with the friction of the law
   * @param roughness m
   * @param losses all else, in velocity heads
   * @param kinematicViscosity m²/s
   */
  record Pipe(
      double bore, double length, double roughness, double losses, double kinematicViscosity) {

    /** A pipe with a roughness, or with a friction factor of the source's own. */
    static Pipe of(Given given) {
      double bore = given.number("bore_m");
      double losses = given.numberOrZero("lossCoefficient");
      if (given.has("frictionFactor")) {
        double entered = given.number("frictionFactor") * given.number("length_m") / bore;
        return new Pipe(bore, 0.0, 0.0, entered + losses, THIN);
      }
      if (given.has("length_m")) {
        return new Pipe(
            bore,
            given.number("length_m"),
            given.number("roughness_m"),
            losses,
            given.number("kinematicViscosity_m2_per_s"));
      }
      return new Pipe(bore, 0.0, 0.0, losses, THIN);
    }

    double head(double flow) {
      return PipeLoss.head(flow, bore, length, roughness, losses, kinematicViscosity);
    }

    double flow(double head) {
      return Search.whereRises(this::head, head, 0.0, FASTEST * area(bore));
    }
  }
}
