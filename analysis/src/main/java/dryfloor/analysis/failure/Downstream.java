package dryfloor.analysis.failure;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Follows runs through junctions, in the direction in which they are drawn or against it. */
final class Downstream {

  private final Drawing drawing;

  Downstream(Drawing drawing) {
    this.drawing = drawing;
  }

  /** What shuts a supply off before its water reaches a vessel, held open or kept running. */
  List<Effect> nothingShuts(String supply) {
    return heldOpen(
        Drawing.byId(drawing.installation().runs())
            .filter(run -> run.from() instanceof RunEnd.AtSupply end && end.at().equals(supply)));
  }

  /** What shuts off in this run and behind it before a vessel, held open or kept running. */
  List<Effect> nothingShuts(Run run) {
    return heldOpen(Stream.of(run));
  }

  /** The run itself and every run that joins into it, up to the next vessel, by id. */
  List<Run> upstreamOf(Run run) {
    Map<String, Run> seen = new TreeMap<>(Map.of(run.id(), run));
    ArrayDeque<Run> open = new ArrayDeque<>(List.of(run));
    while (!open.isEmpty()) {
      if (open.removeFirst().from() instanceof RunEnd.AtJunction junction) {
        drawing.installation().runs().stream()
            .filter(next -> isAt(next.to(), junction))
            .filter(next -> seen.putIfAbsent(next.id(), next) == null)
            .forEach(open::addLast);
      }
    }
    return List.copyOf(seen.values());
  }

  private List<Effect> heldOpen(Stream<Run> start) {
    Map<String, Run> seen = new TreeMap<>();
    ArrayDeque<Run> open = new ArrayDeque<>();
    start.forEach(
        run -> {
          seen.put(run.id(), run);
          open.addLast(run);
        });
    while (!open.isEmpty()) {
      if (open.removeFirst().to() instanceof RunEnd.AtJunction junction) {
        drawing.installation().runs().stream()
            .filter(next -> isAt(next.from(), junction))
            .filter(next -> seen.putIfAbsent(next.id(), next) == null)
            .forEach(open::addLast);
      }
    }
    return seen.values().stream()
        .flatMap(run -> run.parts().stream())
        .flatMap(part -> heldOpen(part).stream())
        .toList();
  }

  private static boolean isAt(RunEnd end, RunEnd.AtJunction junction) {
    return end instanceof RunEnd.AtJunction other && other.at().equals(junction.at());
  }

  private Optional<Effect> heldOpen(Part part) {
    return switch (part) {
      case Part.FloatValve valve -> Optional.of(new Effect.ValveHeld(valve.id(), 1));
      case Part.Valve valve ->
          valve.drive() instanceof Part.Valve.Drive.Powered
              ? Optional.of(new Effect.ValveHeld(valve.id(), 1))
              : Optional.empty();
      case Part.Pump pump ->
          drawing.isSwitched(pump.id())
              ? Optional.of(new Effect.IgnoresControls(pump.id()))
              : Optional.empty();
      case Part.CheckValve valve -> Optional.empty();
      case Part.SiphonBreak siphonBreak -> Optional.empty();
      case Part.Joint joint -> Optional.empty();
      case Part.Strainer strainer -> Optional.empty();
      case Part.Restrictor restrictor -> Optional.empty();
      case Part.Device device -> Optional.empty();
    };
  }
}
