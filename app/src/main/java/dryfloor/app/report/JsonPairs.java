package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.analysis.together.PairMatrix;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Protection;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The pairs of one drawing as JSON. */
final class JsonPairs {

  private final Wording wording;
  private final ObjectNode node;

  JsonPairs(Wording wording, ObjectNode node) {
    this.wording = wording;
    this.node = node;
  }

  void put(PairResult pairs) {
    node.put("scope", pairs.scope().name());
    ArrayNode failures = node.putArray("failures");
    pairs.alone().results().forEach(result -> failure(failures.addObject(), result));
    ArrayNode wet = node.putArray("wetTogether");
    pairs.newlyWet().forEach(pair -> wet(wet.addObject(), pair));
    ArrayNode protections = node.putArray("protections");
    pairs.protections().forEach(protection -> protection(protections.addObject(), protection));
    ArrayNode open = node.putArray("noAnswer");
    pairs
        .of(PairAnswer.Unanswered.class)
        .forEach(pair -> ids(open.addObject(), pair).put("reason", pair.reason()));
    matrix(node.putObject("matrix"), pairs.matrix());
  }

  private void failure(ObjectNode into, FailureResult result) {
    into.put("id", FailureNames.id(result.failure()));
    into.put("name", FailureNames.name(result.failure(), wording.installation()));
    into.put("answer", Answer.of(result).name());
    into.put("hidden", FailureTraits.isHidden(result.failure(), wording.installation()));
  }

  private static ObjectNode ids(ObjectNode into, PairAnswer pair) {
    return into.put("first", FailureNames.id(pair.pair().first()))
        .put("second", FailureNames.id(pair.pair().second()));
  }

  private static void wet(ObjectNode into, PairAnswer.Together pair) {
    ids(into, pair);
    JsonOutcome.number(into, "reachedFloors_L", pair.outcome().reachedFloors() * 1000);
    JsonOutcome.optional(into, "firstWetFloor_s", pair.outcome().firstWetFloor(), 1);
    ArrayNode floors = into.putArray("floors");
    pair.outcome().floors().forEach(floors::add);
    JsonOutcome.ending(into.putObject("ending"), pair.outcome().ending());
  }

  private static void protection(ObjectNode into, Protection protection) {
    into.put("failure", FailureNames.id(protection.failure()));
    ArrayNode events = into.putArray("aloneKeepsDry");
    protection
        .events()
        .forEach(
            event -> events.add(FailureNames.id(event.pair().otherThan(protection.failure()))));
  }

  private static void matrix(ObjectNode into, PairMatrix matrix) {
    ArrayNode rows = into.putArray("rows");
    matrix.rows().forEach(row -> rows.add(FailureNames.id(row)));
    ArrayNode columns = into.putArray("columns");
    matrix.columns().forEach(column -> columns.add(FailureNames.id(column)));
    ArrayNode cells = into.putArray("cells");
    for (Failure row : matrix.rows()) {
      ArrayNode line = cells.addArray();
      for (Failure column : matrix.columns()) {
        line.add(matrix.at(row, column).map(answer -> PairSign.of(answer).name()).orElse(""));
      }
    }
  }
}
