package dryfloor.analysis.reference;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.Trial.timeOf;
import static dryfloor.analysis.installation.WaterAssert.vessel;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.hydraulics.Orifice;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How long vessels take to empty or to level out, in a simulation. A mark that the water falls past
 * tells the time. A hole that leaks in a simulation has the coefficient of a sharp edge; where a
 * source takes another, the hole is drawn so that coefficient times area is that of the source.
 */
final class EmptyingAnswers {

  private static final String MARK = "mark";

  /** Slices in which a vessel of uneven walls is measured out. */
  private static final int SLICES = 400;

  /** What the ends of a run count by themselves, in velocity heads. */
  private static final double ENDS = 1.5;

  private EmptyingAnswers() {}

  static double throughHole(Given given) {
    return throughHole(given, given.number("to_m"));
  }

  /** Time goes with the root of the head, so the whole follows from all but the last centimetre. */
  static double wholeThroughHole(Given given) {
    double left = 1e-2;
    double whole = 1.0 - Math.sqrt(left / given.number("from_m"));
    return throughHole(given, left) / whole;
  }

  private static double throughHole(Given given, double to) {
    double from = given.number("from_m");
    Plan plan =
        yard()
            .vessel(
                "tank", shape(given, from + 0.5), v -> v.in("yard").raised(11).level(from).fresh())
            .mark(MARK, "tank", to);
    Effect hole = new Effect.VesselLeaks("tank", 11, holeArea(given), "yard");
    return timeOf(Trial.changing(plan.draw(), hole), What.ACTS, MARK);
  }

  private static double holeArea(Given given) {
    double area =
        given.has("holeArea_m2")
            ? given.number("holeArea_m2")
            : PipeAnswers.area(given.number("holeDiameter_m"));
    return area * given.number("coefficient") / Orifice.SHARP;
  }

  private static Shape shape(Given given, double height) {
    if (given.has("sphereRadius_m")) {
      return sphere(given.number("sphereRadius_m"), height);
    }
    return given.has("tankDiameter_m")
        ? new Shape.Cylinder(given.number("tankDiameter_m"), height)
        : box(1, given.number("tankArea_m2"), height);
  }

  private static Shape sphere(double radius, double height) {
    List<Shape.Measured.Point> points = new ArrayList<>();
    for (int i = 0; i <= SLICES; i++) {
      double depth = i * height / SLICES;
      double volume = Math.PI * depth * depth * (radius - depth / 3.0);
      points.add(new Shape.Measured.Point(depth, volume));
    }
    return new Shape.Measured(points, 2.0 * Math.PI * radius);
  }

  /** By integrating the law: a hole through which so much would leave, less what comes in. */
  static double withInflow(Given given) {
    double from = given.number("from_m");
    double perArea = Orifice.flow(1.0, 1.0, from);
    double area = given.number("outflowAtFrom_m3_per_s") / perArea;
    double inflow = given.number("inflow_m3_per_s");
    return FallingLevel.time(
        from,
        given.number("to_m"),
        given.number("tankArea_m2"),
        head -> Orifice.flow(1.0, area, head) - inflow);
  }

  /** By integrating the law: the water of a simulation is never so thick. */
  static double ofThickLiquid(Given given) {
    double area = PipeAnswers.area(given.number("tankDiameter_m"));
    double from = given.number("from_m");
    DoubleUnaryOperator outflow = PipeAnswers.Pipe.of(given)::flow;
    double to = from - given.number("drawn_m3") / area;
    return FallingLevel.time(from, to, area, outflow);
  }

  /** Heads count from the outlet, which lies 0.2 m below the bottom of the tank. */
  static double throughPipe(Given given) {
    double below = 0.2;
    PipeAnswers.Pipe pipe = PipeAnswers.Pipe.of(given);
    double from = given.number("from_m") - below;
    Plan plan =
        yard()
            .vessel(
                "tank",
                box(1, given.number("tankArea_m2"), from + 0.5),
                v -> v.in("yard").raised(11).level(from).fresh())
            .drain("outlet", 11 - below)
            .run(
                "pipe",
                r ->
                    r.from("tank", 0)
                        .toDrain("outlet")
                        .bore(pipe.bore())
                        .length(0.01)
                        .extraLoss(pipe.losses() - ENDS)
                        .valve("tap", 0.005, 0))
            .mark(MARK, "tank", given.number("to_m") - below);
    return timeOf(Trial.changing(plan.draw(), new Effect.ValveHeld("tap", 1)), What.ACTS, MARK);
  }

  static double levellingThroughHole(Given given) {
    double first = given.number("firstArea_m2");
    double second = given.number("secondArea_m2");
    double from = given.number("from_m");
    double fall = (from - given.number("to_m")) * second / (first + second);
    Plan plan =
        yard()
            .vessel("first", box(1, first, 10), v -> v.in("yard").level(2 + from).fresh())
            .vessel("second", box(1, second, 10), v -> v.in("yard").level(2).fresh())
            .mark(MARK, "first", 2 + from - fall);
    Effect hole = new Effect.VesselLeaks("first", 0.5, holeArea(given), "second");
    return timeOf(Trial.changing(plan.draw(), hole), What.ACTS, MARK);
  }

  static double fallThroughPipes(Given given) {
    double from = given.number("from_m");
    PipeAnswers.Pipe pipe = PipeAnswers.Pipe.of(given);
    Plan plan =
        yard()
            .away(given.number("time_s"))
            .vessel(
                "large",
                new Shape.Cylinder(given.number("firstDiameter_m"), 5),
                v -> v.in("yard").level(2 + from).fresh())
            .vessel(
                "small",
                new Shape.Cylinder(given.number("secondDiameter_m"), 5),
                v -> v.in("yard").level(2).fresh());
    int pipes = (int) given.number("pipes");
    Effect[] opened = new Effect[pipes];
    for (int i = 0; i < pipes; i++) {
      String tap = "tap-" + i;
      opened[i] = new Effect.ValveHeld(tap, 1);
      plan.run(
          "pipe-" + i,
          r ->
              r.from("large", 0)
                  .to("small", 0)
                  .bore(pipe.bore())
                  .length(0.01)
                  .extraLoss(pipe.losses() - ENDS)
                  .valve(tap, 0.005, 0));
    }
    Outcome outcome = Trial.changing(plan.draw(), opened);
    return vessel(outcome, "large").levelBefore() - vessel(outcome, "large").levelAfter();
  }

  private static Plan yard() {
    return Plan.of("Emptying").storey("ground", 0).floor("yard", 1e6);
  }
}
