package dryfloor.app.view.edit;

import dryfloor.model.IdInWords;
import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a tee into the middle of a run, which is two runs from then on. */
final class Tee {

  private Tee() {}

  /** The drawing with a tee in this run. */
  static Placed in(Installation drawing, Run run) {
    double middle = run.length() / 2;
    String tee = free(drawing, "tee");
    double elevation = RunCourse.of(drawing, run).elevationAt(middle);
    Run first = piece(run, run.id(), run.name(), run.from(), new RunEnd.AtJunction(tee), 0, middle);
    Run second =
        piece(
            run,
            free(drawing, run.id()),
            run.name() + " 2",
            new RunEnd.AtJunction(tee),
            run.to(),
            middle,
            run.length());
    List<Junction> junctions = new ArrayList<>(drawing.junctions());
    junctions.add(new Junction(tee, IdInWords.of(tee), elevation));
    List<Run> runs =
        drawing.runs().stream()
            .flatMap(old -> old.id().equals(run.id()) ? Stream.of(first, second) : Stream.of(old))
            .toList();
    return new Placed(new Trial.Sound(drawing.withJunctions(junctions).withRuns(runs)), tee);
  }

  private static String free(Installation drawing, String wished) {
    List<String> taken =
        Stream.concat(
                drawing.elements().map(Element::id),
                drawing.runs().stream().flatMap(run -> run.parts().stream()).map(Part::id))
            .collect(Collectors.toList());
    int number = 2;
    String id = wished;
    while (taken.contains(id)) {
      id = wished + "-" + number++;
    }
    return id;
  }

  /** What lies between two distances of a run; fittings stay with its first half. */
  private static Run piece(
      Run run, String id, String name, RunEnd from, RunEnd to, double start, double end) {
    DoublePredicate inside = along -> (along > start && along <= end) || (start == 0 && along == 0);
    return new Run(
        id,
        name,
        from,
        to,
        run.duty(),
        run.bore(),
        end - start,
        run.roughness(),
        start == 0 ? run.fittings() : List.of(),
        start == 0 ? run.extraLoss() : 0,
        run.waypoints().stream()
            .filter(point -> inside.test(point.along()))
            .map(point -> new Run.Waypoint(point.elevation(), point.along() - start))
            .toList(),
        run.parts().stream()
            .filter(part -> inside.test(part.along()))
            .map(part -> part.at(part.along() - start))
            .toList(),
        run.vented(),
        run.standsIn());
  }
}
