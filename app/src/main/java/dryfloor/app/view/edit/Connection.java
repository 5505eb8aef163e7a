package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** Leads a new run from one place to another. */
public final class Connection {

  /** Room for bends and the way sideways (m), where nobody has measured the pipe. */
  private static final double SPARE = 0.5;

  private static final double OVER_THE_RIM = 0.06;

  private Connection() {}

  /**
   * Where a run is to begin or end.
   *
   * @param id of a vessel, floor, junction, supply or drain
   * @param elevation of the opening in a vessel (m)
   */
  public record End(String id, double elevation) {}

  /**
   * A run of common bore between two places: it leaves a vessel by a port and enters one by a free
   * end over its rim.
   *
   * @param sideways distance between the two (m)
   */
  public static Placed between(
      Installation drawing, End from, End to, double sideways, Units units) {
    FileTree tree = FileTree.of(drawing, units);
    Surroundings near = new Surroundings(drawing, Optional.of(from.id()));
    Optional<ObjectNode> first = end(tree, near, from, "port");
    Optional<ObjectNode> second = end(tree, near, to, "free");
    if (first.isEmpty() || second.isEmpty()) {
      return Placed.refused(
          "a run leads from one place to another",
          "begin and end at a vessel, floor, junction, supply or drain");
    }
    Optional<Vessel> into = near.vessel(to.id());
    double top =
        into.map(vessel -> Math.max(from.elevation(), vessel.rim() + OVER_THE_RIM))
            .orElse(Math.max(from.elevation(), to.elevation()));
    double length = (top - from.elevation()) + (top - to.elevation()) + sideways + SPARE;
    boolean falls =
        from.elevation() > to.elevation()
            && tree.find(from.id()).map(b -> !b.kind().equals("supply")).orElse(true);
    ObjectNode run = FileTree.MAPPER.createObjectNode().put("id", Ids.free(tree, "run"));
    run.set("from", first.orElseThrow());
    run.set("to", second.orElseThrow());
    run.put("duty", falls ? "drain" : "feed")
        .put("bore", "32 mm")
        .put("length", String.format(Locale.ROOT, "%.1f m", length + 0.05));
    into.filter(vessel -> from.elevation() < vessel.rim() + OVER_THE_RIM)
        .ifPresent(
            vessel ->
                run.putArray("waypoints")
                    .addObject()
                    .put("elevation", "60 mm above " + vessel.id() + ".rim"));
    landing(near, from).or(() -> landing(near, to)).ifPresent(place -> run.put("standsIn", place));
    tree.list("runs").add(run);
    return new Placed(tree.read(), run.path("id").asString());
  }

  private static Optional<ObjectNode> end(
      FileTree tree, Surroundings near, End end, String opening) {
    return tree.find(end.id())
        .filter(
            branch ->
                List.of("vessel", "floor", "junction", "supply", "drain").contains(branch.kind()))
        .map(
            branch -> {
              ObjectNode node = FileTree.MAPPER.createObjectNode().put(branch.kind(), end.id());
              near.vessel(end.id())
                  .ifPresent(
                      vessel ->
                          node.put("at", millimetres(inside(vessel, end.elevation())))
                              .put("opening", opening));
              return node;
            });
  }

  private static double inside(Vessel vessel, double elevation) {
    return Math.clamp(elevation - vessel.bottom(), 0, vessel.shape().height());
  }

  private static String millimetres(double metres) {
    return Math.round(metres * 1000) + " mm";
  }

  private static Optional<String> landing(Surroundings near, End end) {
    return near.vessel(end.id())
        .map(Vessel::standsIn)
        .or(() -> Optional.of(end.id()).filter(near.places()::contains));
  }
}
