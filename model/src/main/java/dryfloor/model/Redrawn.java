package dryfloor.model;

import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The same drawing with one thing drawn otherwise; an id that is nobody's changes nothing. What
 * comes out need not make sense: that is for the checks to say.
 */
public final class Redrawn {

  private Redrawn() {}

  /** With another vessel in the place of one. */
  public static Installation vessel(Installation drawn, String id, UnaryOperator<Vessel> change) {
    return drawn.withVessels(changed(drawn.vessels(), id, change));
  }

  /** With another weir in the place of one. */
  public static Installation weir(Installation drawn, String id, UnaryOperator<Weir> change) {
    return drawn.withWeirs(changed(drawn.weirs(), id, change));
  }

  /** With another run in the place of one. */
  public static Installation run(Installation drawn, String id, UnaryOperator<Run> change) {
    return drawn.withRuns(changed(drawn.runs(), id, change));
  }

  /** With another run in the place of that in which a part sits. */
  public static Installation runOf(Installation drawn, String part, UnaryOperator<Run> change) {
    return drawn.withRuns(
        drawn.runs().stream().map(run -> holds(run, part) ? change.apply(run) : run).toList());
  }

  /** With another part in the place of one. */
  public static Installation part(Installation drawn, String id, UnaryOperator<Part> change) {
    return runOf(
        drawn,
        id,
        run ->
            run.withParts(
                run.parts().stream()
                    .map(part -> part.id().equals(id) ? change.apply(part) : part)
                    .toList()));
  }

  private static boolean holds(Run run, String part) {
    return run.parts().stream().anyMatch(p -> p.id().equals(part));
  }

  private static <E extends Element> List<E> changed(
      List<E> all, String id, UnaryOperator<E> change) {
    return all.stream()
        .map(element -> element.id().equals(id) ? change.apply(element) : element)
        .toList();
  }
}
