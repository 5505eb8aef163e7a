package dryfloor.analysis.reference;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;

import dryfloor.analysis.hydraulics.PumpCurve;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;

/** What {@link PumpCurve} says, alone and on its pipe. */
final class PumpAnswers {

  private static final double AWAY = 100;

  /** What the ends of a run count by themselves, in velocity heads. */
  private static final double ENDS = 1.5;

  private PumpAnswers() {}

  private static PumpCurve curve(Given given) {
    return PumpCurve.through(given.numbers("curveFlows_m3_per_s"), given.numbers("curveHeads_m"));
  }

  static double headAtSpeed(Given given) {
    return curve(given).atSpeed(given.number("speedShare")).head(given.number("flow_m3_per_s"));
  }

  static double flowAtSpeed(Given given) {
    PumpCurve slower = curve(given).atSpeed(given.number("speedShare"));
    double most = slower.runOutFlow();
    return Search.whereRises(q -> -slower.head(q), -given.number("head_m"), 0.0, most);
  }

  /** What a throttle must cost, in velocity heads, so that the pump drives just this flow. */
  static double throttle(Given given) {
    double flow = given.number("flow_m3_per_s");
    double bore = given.number("bore_m");
    PipeAnswers.Pipe pipe = PipeAnswers.Pipe.of(given);
    PipeAnswers.Pipe oneVelocityHead = new PipeAnswers.Pipe(bore, 0.0, 0.0, 1.0, 1e-8);
    return (curve(given).head(flow) - pipe.head(flow)) / oneVelocityHead.head(flow);
  }

  static double dutyFlow(Given given) {
    PumpCurve curve = curve(given);
    PipeAnswers.Pipe pipe = PipeAnswers.Pipe.of(given);
    double lift = given.number("lift_m");
    return Search.whereRises(
        q -> lift + pipe.head(q) - curve.head(q), 0.0, 0.0, curve.runOutFlow());
  }

  static double dutyHead(Given given) {
    return curve(given).head(dutyFlow(given));
  }

  static double simulatedDutyHead(Given given) {
    return curve(given).head(simulatedDutyFlow(given));
  }

  static double simulatedDutyFlow(Given given) {
    double[] flows = given.numbers("curveFlows_m3_per_s");
    double[] heads = given.numbers("curveHeads_m");
    double[] points = new double[2 * flows.length];
    for (int i = 0; i < flows.length; i++) {
      points[2 * i] = 1000 * flows[i];
      points[2 * i + 1] = heads[i];
    }
    PipeAnswers.Pipe pipe = PipeAnswers.Pipe.of(given);
    double lift = given.number("lift_m");
    Plan plan =
        Plan.of("Pump")
            .away(AWAY)
            .storey("ground", 0)
            .floor("yard", 1e9)
            .circuit("power")
            .vessel("low", box(1e4, 1e4, 50), v -> v.in("yard").level(2).fresh())
            .vessel("high", box(1e4, 1e4, 50), v -> v.in("yard").level(2 + lift).fresh())
            .run(
                "main",
                r ->
                    r.from("low", 0)
                        .to("high", 1)
                        .bore(pipe.bore())
                        .length(0.01)
                        .extraLoss(pipe.losses() - ENDS)
                        .pump("pump", 0.005, "power", points));
    return carried(Trial.normal(plan.draw()), "main", "low", "high") / AWAY;
  }
}
