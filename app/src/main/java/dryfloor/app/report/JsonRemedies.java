package dryfloor.app.report;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.SingleChange;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What mends failures as JSON. */
final class JsonRemedies {

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
