package dryfloor.analysis.rehearsal;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A drawing with one thing otherwise. */
final class OtherwiseDrawn {

  private OtherwiseDrawn() {}

  static Installation siphonBreakLower(Installation drawing, Cause.SiphonBreakLower cause) {
    return parts(
        drawing,
        part ->
            part instanceof Part.SiphonBreak hole && hole.id().equals(cause.siphonBreak())
                ? new Part.SiphonBreak(
                    hole.id(),
                    hole.name(),
                    hole.along(),
                    hole.elevation() - cause.by(),
                    hole.diameter(),
                    hole.count(),
                    hole.coveredBy())
                : part);
  }

  static Installation pumpStronger(Installation drawing, Cause.PumpStronger cause) {
    return parts(
        drawing,
        part ->
            part instanceof Part.Pump pump && pump.id().equals(cause.pump())
                ? new Part.Pump(
                    pump.id(),
                    pump.name(),
                    pump.along(),
                    pump.curve(),
                    pump.speed() * cause.times(),
                    pump.kind(),
                    pump.power(),
                    pump.stoppedLoss(),
                    pump.primesAgain(),
                    pump.standsIn())
                : part);
  }

  static Installation filled(Installation drawing, Cause.FilledOtherwise cause) {
    return vessels(
        drawing, cause.vessel(), vessel -> vessel.withLevel(vessel.level() + cause.by()));
  }

  /** Spread evenly up to the rim. */
  static Installation moreDisplaced(Installation drawing, Cause.MoreDisplaced cause) {
    return vessels(drawing, cause.vessel(), vessel -> moreDisplaced(vessel, cause.share()));
  }

  private static Vessel moreDisplaced(Vessel vessel, double share) {
    double height = vessel.shape().height();
    List<Vessel.Displacement> contents = new ArrayList<>(vessel.contents());
    contents.add(new Vessel.Displacement(0, height, share * vessel.shape().capacity()));
    return new Vessel(
        vessel.id(),
        vessel.name(),
        vessel.role(),
        vessel.shape(),
        vessel.bottom(),
        vessel.level(),
        contents,
        vessel.salinity(),
        vessel.spillEdge(),
        vessel.standsIn(),
        vessel.emptyMass());
  }

  private static Installation vessels(
      Installation drawing, String id, UnaryOperator<Vessel> change) {
    return drawing.withVessels(
        drawing.vessels().stream()
            .map(vessel -> vessel.id().equals(id) ? change.apply(vessel) : vessel)
            .toList());
  }

  private static Installation parts(Installation drawing, UnaryOperator<Part> change) {
    return drawing.withRuns(
        drawing.runs().stream()
            .map(run -> withParts(run, run.parts().stream().map(change).toList()))
            .toList());
  }

  private static Run withParts(Run run, List<Part> parts) {
    return new Run(
        run.id(),
        run.name(),
        run.from(),
        run.to(),
        run.duty(),
        run.bore(),
        run.length(),
        run.roughness(),
        run.fittings(),
        run.extraLoss(),
        run.waypoints(),
        parts,
        run.vented(),
        run.standsIn());
  }
}
