package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Puts another element in the place of one of a drawing; an id that is nobody's changes nothing.
 */
final class Revision {

  private Revision() {}

  static Installation vessel(Installation drawing, String id, UnaryOperator<Vessel> change) {
    return with(drawing, changed(drawing.vessels(), id, change), drawing.weirs(), drawing.runs());
  }

  static Installation weir(Installation drawing, String id, UnaryOperator<Weir> change) {
    return with(drawing, drawing.vessels(), changed(drawing.weirs(), id, change), drawing.runs());
  }

  static Installation run(Installation drawing, String id, UnaryOperator<Run> change) {
    return with(drawing, drawing.vessels(), drawing.weirs(), changed(drawing.runs(), id, change));
  }

  /** Changes the run in which a part sits. */
  static Installation runOf(Installation drawing, String part, UnaryOperator<Run> change) {
    return drawing.runs().stream()
        .filter(run -> run.parts().stream().anyMatch(p -> p.id().equals(part)))
        .findFirst()
        .map(run -> run(drawing, run.id(), change))
        .orElse(drawing);
  }

  private static <T extends Element> List<T> changed(
      List<T> all, String id, UnaryOperator<T> change) {
    return all.stream()
        .map(element -> element.id().equals(id) ? change.apply(element) : element)
        .toList();
  }

  private static Installation with(
      Installation drawing, List<Vessel> vessels, List<Weir> weirs, List<Run> runs) {
    return new Installation(
        drawing.name(),
        drawing.conditions(),
        drawing.storeys(),
        drawing.floors(),
        vessels,
        weirs,
        drawing.junctions(),
        drawing.supplies(),
        drawing.drains(),
        runs,
        drawing.circulationPumps(),
        drawing.circuits(),
        drawing.controls(),
        drawing.failureSettings());
  }
}
