package dryfloor.app.report;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Two drawings compared, for other programs; always metric, the unit at the end of each name. */
public final class JsonChanges {

  private static final int VERSION = 1;
  private static final double LITRES = 1000;
  private static final double MM = 1000;

  private JsonChanges() {}

  /** The text. */
  public static String of(Changes changes) {
    ObjectNode root = JsonText.root();
    root.put("compare", VERSION);
    list(root.putArray("worse"), changes.worse());
    list(root.putArray("better"), changes.better());
    list(root.putArray("same"), changes.same());
    ArrayNode added = root.putArray("onlyInNew");
    changes.added().forEach(result -> added.add(FailureNames.id(result.failure())));
    ArrayNode gone = root.putArray("onlyInOld");
    changes.gone().forEach(failure -> gone.add(failure.id()));
    return JsonText.of(root);
  }

  private static void list(ArrayNode into, List<Changes.Change> changes) {
    for (Changes.Change change : changes) {
      ObjectNode node = into.addObject();
      node.put("id", change.failure());
      node.put("before", Answer.of(change.before()).name());
      node.put("now", Answer.of(change.now()).name());
      number(node, "moreWaterOnFloors_L", change.moreWater(), LITRES);
      number(node, "moreFreeboard_mm", change.moreMargin(), MM);
    }
  }

  private static void number(ObjectNode into, String name, OptionalDouble value, double factor) {
    if (value.isPresent()) {
      into.put(name, Math.round(value.getAsDouble() * factor * 1000) / 1000.0);
    }
  }
}
