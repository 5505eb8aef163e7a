package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Distances along runs that follow from heights need not be in a file. */
final class Distances {

  private static final double SAME = 1e-6;
  private static final String ALONG = "along";

  private Distances() {}

  /**
   * Takes them out of the tree of this drawing, run by run where all of them would be read again.
   */
  static void leaveOutWhatFollows(FileTree tree, Installation drawing) {
    FileTree without = tree.copy();
    without.list("runs").forEach(Distances::strip);
    switch (without.read()) {
      case Trial.Sound sound -> {
        List<Run> read = sound.drawing().runs();
        for (int i = 0; i < read.size(); i++) {
          if (isSame(alongs(read.get(i)), alongs(drawing.runs().get(i)))) {
            strip(tree.list("runs").get(i));
          }
        }
      }
      case Trial.Refused refused -> {}
    }
    if (drawing.runs().isEmpty()) {
      tree.root().remove("runs");
    }
  }

  private static void strip(JsonNode run) {
    Stream.of("waypoints", "parts")
        .flatMap(list -> run.path(list).valueStream())
        .map(ObjectNode.class::cast)
        .forEach(item -> item.remove(ALONG));
  }

  private static List<Double> alongs(Run run) {
    return Stream.concat(
            run.waypoints().stream().map(Run.Waypoint::along),
            run.parts().stream().map(part -> part.along()))
        .toList();
  }

  private static boolean isSame(List<Double> one, List<Double> other) {
    for (int i = 0; i < one.size(); i++) {
      if (Math.abs(one.get(i) - other.get(i)) > SAME) {
        return false;
      }
    }
    return true;
  }
}
