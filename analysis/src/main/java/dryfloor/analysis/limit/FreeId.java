package dryfloor.analysis.limit;

import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.part.Part;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Ids that nothing in a drawing has yet, for what is added to it. */
final class FreeId {

  private final Set<String> taken;

  FreeId(Installation drawn) {
    taken =
        Stream.concat(
                drawn.elements().map(Element::id),
                drawn.runs().stream().flatMap(run -> run.parts().stream()).map(Part::id))
            .collect(Collectors.toSet());
  }

  /** The wished id if it is free, else with the next free number. */
  String like(String wished) {
    String id = wished;
    for (int number = 2; taken.contains(id); number++) {
      id = wished + "-" + number;
    }
    return id;
  }
}
