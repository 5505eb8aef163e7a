package dryfloor.app.report;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.absence.GuardsAtWork;
import dryfloor.analysis.absence.LeftAlone;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Absences as JSON. */
final class JsonAway {

  private static final double LITRES = 1000;

  private final Wording wording;
  private final ObjectNode node;

  JsonAway(Wording wording, ObjectNode node) {
    this.wording = wording;
    this.node = node;
  }

  void put(AbsenceResult absences) {
    ArrayNode times = node.putArray("absences");
    for (double time : absences.times()) {
      ObjectNode absence = times.addObject();
      JsonOutcome.number(absence, "time_s", time);
      absence.put("wet", absences.wetBy(time));
      absences
          .worstBy(time)
          .ifPresent(
              worst -> {
                absence.put("worst", FailureNames.id(worst.failure()));
                JsonOutcome.number(absence, "onFloors_L", onFloors(absences, worst, time) * LITRES);
              });
    }
    ArrayNode failures = node.putArray("failures");
    absences.known().forEach(known -> known(failures.addObject(), known));
    ArrayNode open = node.putArray("noAnswer");
    absences
        .unknown()
        .forEach(
            unknown -> named(open.addObject(), unknown.failure()).put("reason", unknown.reason()));
  }

  private static double onFloors(AbsenceResult absences, LeftAlone.Known failure, double time) {
    return failure.onFloors().get(absences.times().indexOf(time));
  }

  private ObjectNode named(ObjectNode into, Failure failure) {
    return into.put("id", FailureNames.id(failure))
        .put("name", FailureNames.name(failure, wording.installation()));
  }

  private void known(ObjectNode into, LeftAlone.Known known) {
    named(into, known.failure());
    JsonOutcome.optional(into, "firstWetFloor_s", known.firstWet(), 1);
    ArrayNode onFloors = into.putArray("onFloors_L");
    known.onFloors().forEach(volume -> onFloors.add(JsonOutcome.rounded(volume * LITRES)));
    known.guards().ifPresent(guards -> guards(into.putObject("guards"), guards));
  }

  private static void guards(ObjectNode into, GuardsAtWork guards) {
    acted(into.putArray("acted"), guards.acted());
    switch (guards) {
      case GuardsAtWork.Compared compared -> {
        into.put("worth", compared.worth().name());
        JsonOutcome.number(into, "with_L", compared.with() * LITRES);
        JsonOutcome.number(into, "without_L", compared.without() * LITRES);
        JsonOutcome.optional(into, "firstWetFloorWithout_s", compared.firstWetWithout(), 1);
      }
      case GuardsAtWork.NotKnown open -> into.put("reason", open.reason());
    }
  }

  private static void acted(ArrayNode list, List<String> ids) {
    ids.forEach(list::add);
  }
}
