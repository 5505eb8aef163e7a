package dryfloor.analysis.limit;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import dryfloor.model.shape.Shape;
import java.util.List;
import java.util.function.UnaryOperator;

/** The same drawing with one element drawn otherwise. */
final class Redrawn {

  private Redrawn() {}

  static Installation vessel(Installation drawn, String id, UnaryOperator<Vessel> change) {
    return with(
        drawn,
        drawn.vessels().stream().map(v -> v.id().equals(id) ? change.apply(v) : v).toList(),
        drawn.weirs(),
        drawn.runs());
  }

  static Installation weir(Installation drawn, String id, double crest) {
    return with(
        drawn,
        drawn.vessels(),
        drawn.weirs().stream().map(w -> w.id().equals(id) ? weir(w, crest) : w).toList(),
        drawn.runs());
  }

  static Installation run(Installation drawn, String id, UnaryOperator<Run> change) {
    return with(
        drawn,
        drawn.vessels(),
        drawn.weirs(),
        drawn.runs().stream().map(r -> r.id().equals(id) ? change.apply(r) : r).toList());
  }

  static Installation part(Installation drawn, String id, UnaryOperator<Part> change) {
    return with(
        drawn,
        drawn.vessels(),
        drawn.weirs(),
        drawn.runs().stream().map(run -> parts(run, id, change)).toList());
  }

  private static Installation with(
      Installation drawn, List<Vessel> vessels, List<Weir> weirs, List<Run> runs) {
    return new Installation(
        drawn.name(),
        drawn.conditions(),
        drawn.storeys(),
        drawn.floors(),
        vessels,
        weirs,
        drawn.junctions(),
        drawn.supplies(),
        drawn.drains(),
        runs,
        drawn.circulationPumps(),
        drawn.circuits(),
        drawn.controls(),
        drawn.failureSettings());
  }

  /** A vessel of another shape; it spills over the same share of its rim. */
  static Vessel vessel(Vessel drawn, Shape shape, double level) {
    return new Vessel(
        drawn.id(),
        drawn.name(),
        drawn.role(),
        shape,
        drawn.bottom(),
        level,
        drawn.contents(),
        drawn.salinity(),
        drawn.spillEdge() * shape.rimLength() / drawn.shape().rimLength(),
        drawn.standsIn(),
        drawn.emptyMass());
  }

  private static Weir weir(Weir drawn, double crest) {
    return new Weir(
        drawn.id(), drawn.name(), drawn.kind(), drawn.from(), drawn.to(), crest, drawn.length());
  }

  private static Run parts(Run drawn, String id, UnaryOperator<Part> change) {
    return drawn.parts().stream().noneMatch(part -> part.id().equals(id))
        ? drawn
        : run(
            drawn,
            drawn.from(),
            drawn.to(),
            drawn.bore(),
            drawn.length(),
            drawn.waypoints(),
            drawn.parts().stream().map(p -> p.id().equals(id) ? change.apply(p) : p).toList());
  }

  static Run run(
      Run drawn,
      RunEnd from,
      RunEnd to,
      double bore,
      double length,
      List<Run.Waypoint> waypoints,
      List<Part> parts) {
    return new Run(
        drawn.id(),
        drawn.name(),
        from,
        to,
        drawn.duty(),
        bore,
        length,
        drawn.roughness(),
        drawn.fittings(),
        drawn.extraLoss(),
        waypoints,
        parts,
        drawn.vented(),
        drawn.standsIn());
  }
}
