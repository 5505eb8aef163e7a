package dryfloor.analysis.band;

import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;

/** A drawing of which some heights were only measured so well. */
final class Measured implements Uncertain {

  /** The drawing with one thing so much (m) higher or wider than drawn. */
  private record Doubt(double plusMinus, Redrawing redrawing) {}

  /** Draws one thing otherwise. */
  interface Redrawing {
    Installation by(Installation drawn, double more);
  }

  private final Installation drawn;
  private final List<Doubt> doubts = new ArrayList<>();

  Measured(Installation drawn) {
    this.drawn = drawn;
  }

  Measured level(String vessel, double plusMinus) {
    return doubt(
        plusMinus,
        (house, more) -> Redrawn.vessel(house, vessel, v -> v.withLevel(v.level() + more)));
  }

  Measured siphonBreak(String part, double plusMinus) {
    return hole(part, plusMinus, (h, more) -> h.withElevation(h.elevation() + more));
  }

  Measured breakHole(String part, double plusMinus) {
    return hole(
        part,
        plusMinus,
        (h, more) ->
            new Part.SiphonBreak(
                h.id(),
                h.name(),
                h.along(),
                h.elevation(),
                h.diameter() + more,
                h.count(),
                h.coveredBy()));
  }

  /** Draws a hole otherwise. */
  private interface Drilling {
    Part.SiphonBreak by(Part.SiphonBreak hole, double more);
  }

  private Measured hole(String part, double plusMinus, Drilling drilling) {
    return doubt(
        plusMinus,
        (house, more) -> Redrawn.part(house, part, p -> drilling.by((Part.SiphonBreak) p, more)));
  }

  Measured crest(String weir, double plusMinus) {
    return doubt(
        plusMinus, (house, more) -> Redrawn.weir(house, weir, w -> w.withCrest(w.crest() + more)));
  }

  Measured bore(String run, double plusMinus) {
    return doubt(
        plusMinus, (house, more) -> Redrawn.run(house, run, r -> r.withBore(r.bore() + more)));
  }

  Measured speed(String pump, double plusMinus) {
    return doubt(
        plusMinus,
        (house, more) ->
            Redrawn.part(
                house, pump, p -> ((Part.Pump) p).withSpeed(((Part.Pump) p).speed() + more)));
  }

  Measured doubt(double plusMinus, Redrawing redrawing) {
    doubts.add(new Doubt(plusMinus, redrawing));
    return this;
  }

  @Override
  public int values() {
    return doubts.size();
  }

  @Override
  public Installation at(Point point) {
    Installation house = drawn;
    for (int i = 0; i < doubts.size(); i++) {
      Doubt doubt = doubts.get(i);
      house = doubt.redrawing().by(house, point.shares().get(i) * doubt.plusMinus());
    }
    return house;
  }
}
