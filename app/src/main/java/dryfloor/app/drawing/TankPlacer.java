package dryfloor.app.drawing;

import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.List;
import java.util.Map;

/** Puts vessels side by side and into one another (m). */
final class TankPlacer {

  /** Between vessels that share no wall. */
  private static final double GAP = 0.12;

  /** Between a vessel and the wall of the one around it. */
  private static final double CLEARANCE = 0.06;

  private final VesselTree tree;

  TankPlacer(VesselTree tree) {
    this.tree = tree;
  }

  /** Width that neighbours take together. */
  double width(List<Vessel> group) {
    return group.stream().mapToDouble(this::width).sum();
  }

  private double width(Vessel vessel) {
    return Math.max(Outline.of(vessel.shape()).width(), inner(vessel));
  }

  private double inner(Vessel vessel) {
    List<List<Vessel>> groups = tree.groupsIn(vessel.id());
    double widths = groups.stream().mapToDouble(this::width).sum();
    return groups.isEmpty() ? 0 : widths + (groups.size() - 1) * GAP + 2 * CLEARANCE;
  }

  /** Places neighbours, and what stands in them, from this left end on. */
  void place(List<Vessel> group, double left, int depth, Map<String, Tank> tanks) {
    double at = left;
    for (int i = 0; i < group.size(); i++) {
      Vessel vessel = group.get(i);
      double width = width(vessel);
      double leftTop = i == 0 ? vessel.rim() : edge(group.get(i - 1), vessel);
      double rightTop = i == group.size() - 1 ? vessel.rim() : edge(vessel, group.get(i + 1));
      tanks.put(
          vessel.id(),
          new Tank(
              vessel.id(),
              at,
              at + width,
              Outline.of(vessel.shape()).taper(),
              vessel.bottom(),
              vessel.rim(),
              leftTop,
              rightTop,
              tree.support(vessel),
              depth));
      placeInside(vessel, at, width, depth + 1, tanks);
      at += width;
    }
  }

  private void placeInside(
      Vessel vessel, double left, double width, int depth, Map<String, Tank> tanks) {
    List<List<Vessel>> groups = tree.groupsIn(vessel.id());
    double free = width - inner(vessel);
    double at = left + CLEARANCE + free / 2;
    for (List<Vessel> inside : groups) {
      place(inside, at, depth, tanks);
      at += width(inside) + GAP;
    }
  }

  private double edge(Vessel one, Vessel other) {
    return tree.wallBetween(one, other).map(Weir::crest).orElse(Math.max(one.rim(), other.rim()));
  }
}
