package dryfloor.app.report;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Cost;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.SingleChange;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What mends failures as JSON. */
final class JsonRemedies {

  private static final double LITRES_A_MINUTE = 60_000;

  private final RemedyWords words;

  JsonRemedies(Wording wording) {
    this.words = new RemedyWords(wording);
  }

  void put(ArrayNode into, List<Remedy> remedies) {
    remedies.forEach(remedy -> put(into.addObject(), remedy));
  }

  private void put(ObjectNode into, Remedy remedy) {
    into.put("failure", FailureNames.id(remedy.failure()));
    into.put("kind", RemedyWords.kind(remedy.change()));
    into.put("at", remedy.change().at());
    added(into, remedy.change());
    into.put("sentence", words.change(remedy.change()));
    ArrayNode costs = into.putArray("costs");
    words.costs(remedy).forEach(costs::add);
    ArrayNode flows = into.putArray("flows");
    remedy.costs().stream()
        .filter(Cost.FlowsOtherwise.class::isInstance)
        .map(Cost.FlowsOtherwise.class::cast)
        .forEach(flow -> put(flows.addObject(), flow));
  }

  private static void put(ObjectNode into, Cost.FlowsOtherwise flow) {
    into.put("run", flow.run());
    JsonOutcome.number(into, "flow_L_per_min", flow.now() * LITRES_A_MINUTE);
    JsonOutcome.number(into, "today_L_per_min", flow.before() * LITRES_A_MINUTE);
  }

  private static void added(ObjectNode into, SingleChange change) {
    switch (change) {
      case SingleChange.Moved moved -> {
        into.put("property", PropertyWords.id(moved.property()));
        JsonLimits.number(into, "value", moved.scale(), moved.value());
        JsonLimits.number(into, "today", moved.scale(), moved.scale().today());
      }
      case SingleChange.AirGapMade gap -> JsonOutcome.number(into, "gap_mm", gap.gap() * 1000);
      case SingleChange.SiphonBreakAdded hole -> into.put("added", hole.hole().id());
      case SingleChange.CutOffAdded cutOff -> into.put("added", cutOff.cutOff().id());
      case SingleChange.StandpipeAdded standpipe -> into.put("added", standpipe.drain().id());
    }
  }
}
