package dryfloor.analysis.generated;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The same drawing with more protection. */
final class Raised {

  private Raised() {}

  /**
   * Rims but those of basins higher by so much (m), walls carried on as they rise. A vessel over
   * whose rim a free end hangs keeps its rim: the end would be in the water behind a taller one,
   * which is another drawing.
   */
  static Installation rims(Installation drawn, double by) {
    Set<String> hungOver =
        drawn.runs().stream()
            .flatMap(run -> Stream.of(run.from(), run.to()))
            .filter(end -> drawn.vessels().stream().anyMatch(v -> hangsOver(end, v)))
            .map(RunEnd::at)
            .collect(Collectors.toSet());
    return with(
        drawn,
        v -> v.isBasin() || hungOver.contains(v.id()) ? v : with(v, taller(v.shape(), by)),
        UnaryOperator.identity());
  }

  private static boolean hangsOver(RunEnd end, Vessel vessel) {
    return end instanceof RunEnd.Opening opening
        && opening.at().equals(vessel.id())
        && opening.elevation() > vessel.rim();
  }

  /** The rim of every basin higher by so much (m). */
  static Installation basins(Installation drawn, double by) {
    return with(
        drawn, v -> v.isBasin() ? with(v, taller(v.shape(), by)) : v, UnaryOperator.identity());
  }

  /** Every basin that is a box longer by this factor. */
  static Installation wider(Installation drawn, double times) {
    return with(
        drawn,
        v ->
            v.isBasin() && v.shape() instanceof Shape.Box box
                ? with(v, new Shape.Box(box.length() * times, box.width(), box.height()))
                : v,
        UnaryOperator.identity());
  }

  /** Every run from a basin or floor to a drain wider by this factor. */
  static Installation drains(Installation drawn, double times) {
    Set<String> drains = drainsOf(drawn);
    return with(
        drawn,
        UnaryOperator.identity(),
        r -> drains.contains(r.id()) ? with(r, r.bore() * times) : r);
  }

  /** Ids of the runs from a basin or floor to a drain. */
  static Set<String> drainsOf(Installation drawn) {
    Set<String> catching =
        drawn.vessels().stream()
            .filter(Vessel::isBasin)
            .map(Vessel::id)
            .collect(Collectors.toSet());
    drawn.floors().forEach(floor -> catching.add(floor.id()));
    return drawn.runs().stream()
        .filter(run -> catching.contains(run.from().at()) && run.to() instanceof RunEnd.AtDrain)
        .map(Run::id)
        .collect(Collectors.toSet());
  }

  private static Shape taller(Shape shape, double by) {
    return switch (shape) {
      case Shape.Box box -> new Shape.Box(box.length(), box.width(), box.height() + by);
      case Shape.Cylinder round -> new Shape.Cylinder(round.diameter(), round.height() + by);
      case Shape.Frustum vat ->
          new Shape.Frustum(
              vat.bottomDiameter(),
              vat.rimDiameter() + (vat.rimDiameter() - vat.bottomDiameter()) * by / vat.height(),
              vat.height() + by);
      case Shape.Prism prism ->
          new Shape.Prism(prism.planArea(), prism.rimLength(), prism.height() + by);
      case Shape.Measured measured -> {
        List<Shape.Measured.Point> points = new ArrayList<>(measured.points());
        double height = measured.height();
        points.add(
            new Shape.Measured.Point(
                height + by, measured.capacity() + by * measured.areaAt(height)));
        yield new Shape.Measured(points, measured.rimLength());
      }
    };
  }

  private static Vessel with(Vessel vessel, Shape shape) {
    return new Vessel(
        vessel.id(),
        vessel.name(),
        vessel.role(),
        shape,
        vessel.bottom(),
        vessel.level(),
        vessel.contents(),
        vessel.salinity(),
        vessel.spillEdge(),
        vessel.standsIn(),
        vessel.emptyMass());
  }

  private static Run with(Run run, double bore) {
    return run.withBore(bore);
  }

  private static Installation with(
      Installation drawn, UnaryOperator<Vessel> vessels, UnaryOperator<Run> runs) {
    return drawn
        .withVessels(drawn.vessels().stream().map(vessels).toList())
        .withRuns(drawn.runs().stream().map(runs).toList());
  }
}
