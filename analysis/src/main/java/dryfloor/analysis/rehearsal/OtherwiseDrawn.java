package dryfloor.analysis.rehearsal;

import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;

/** A drawing with one thing otherwise. */
final class OtherwiseDrawn {

  private OtherwiseDrawn() {}

  static Installation siphonBreakLower(Installation drawing, Cause.SiphonBreakLower cause) {
    return Redrawn.part(
        drawing,
        cause.siphonBreak(),
        part ->
            part instanceof Part.SiphonBreak hole
                ? hole.withElevation(hole.elevation() - cause.by())
                : part);
  }

  static Installation pumpStronger(Installation drawing, Cause.PumpStronger cause) {
    return Redrawn.part(
        drawing,
        cause.pump(),
        part ->
            part instanceof Part.Pump pump ? pump.withSpeed(pump.speed() * cause.times()) : part);
  }

  static Installation filled(Installation drawing, Cause.FilledOtherwise cause) {
    return Redrawn.vessel(
        drawing, cause.vessel(), vessel -> vessel.withLevel(vessel.level() + cause.by()));
  }

  /** Spread evenly up to the rim. */
  static Installation moreDisplaced(Installation drawing, Cause.MoreDisplaced cause) {
    return Redrawn.vessel(drawing, cause.vessel(), v -> moreDisplaced(v, cause.share()));
  }

  private static Vessel moreDisplaced(Vessel vessel, double share) {
    double height = vessel.shape().height();
    List<Vessel.Displacement> contents = new ArrayList<>(vessel.contents());
    contents.add(new Vessel.Displacement(0, height, share * vessel.shape().capacity()));
    return vessel.withContents(contents);
  }
}
