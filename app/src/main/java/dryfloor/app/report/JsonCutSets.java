package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.together.CutSet;
import dryfloor.analysis.together.CutSetResult;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The smallest sets of failures of one drawing as JSON. */
final class JsonCutSets {

  private final Wording wording;
  private final ObjectNode node;

  JsonCutSets(Wording wording, ObjectNode node) {
    this.wording = wording;
    this.node = node;
  }

  void put(CutSetResult found) {
    ObjectNode names = node.putObject("failures");
    found
        .pairs()
        .failures()
        .forEach(
            failure ->
                names.put(
                    FailureNames.id(failure), FailureNames.name(failure, wording.installation())));
    ArrayNode sets = node.putArray("sets");
    found.sets().forEach(set -> set(sets.addObject(), set));
    ArrayNode open = node.putArray("noAnswer");
    for (CutSetResult.Open set : found.unanswered()) {
      ObjectNode into = open.addObject();
      ids(into, set.failures());
      into.put("reason", set.reason());
    }
    node.put("setsOfThreeWithDryPairs", found.threes());
    node.put("setsOfThreeSimulated", found.simulated());
  }

  private static void set(ObjectNode into, CutSet set) {
    ids(into, set.failures());
    JsonOutcome.number(into, "reachedFloors_L", set.outcome().reachedFloors() * 1000);
    JsonOutcome.optional(into, "firstWetFloor_s", set.outcome().firstWetFloor(), 1);
    ArrayNode floors = into.putArray("floors");
    set.outcome().floors().forEach(floors::add);
    JsonOutcome.ending(into.putObject("ending"), set.outcome().ending());
  }

  private static void ids(ObjectNode into, List<Failure> failures) {
    ArrayNode ids = into.putArray("failures");
    failures.forEach(failure -> ids.add(FailureNames.id(failure)));
  }
}
