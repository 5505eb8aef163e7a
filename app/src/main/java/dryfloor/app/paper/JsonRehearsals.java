package dryfloor.app.paper;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.analysis.sweep.SweepResult;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The rehearsal sheet for other programs, in the order in which it is gone through. */
final class JsonRehearsals {

  private static final double MM = 1000;

  private JsonRehearsals() {}

  static void put(ArrayNode list, Report report, SweepResult sweep) {
    List<RehearsalStep> steps = Rehearsal.of(sweep);
    for (int i = 0; i < steps.size(); i++) {
      put(list.addObject(), steps.get(i), report.rehearsals().get(i));
    }
  }

  private static void put(ObjectNode into, RehearsalStep step, Report.Rehearsal words) {
    into.put("id", FailureNames.id(step.result().failure()));
    into.put("failure", words.failure());
    into.put("preparation", words.cut());
    into.put("readAfter_s", Math.ceil(step.readAfter()));
    into.put("tolerance_mm", tenths(Rehearsal.TOLERANCE));
    ArrayNode levels = into.putArray("levels");
    for (RehearsalStep.ExpectedLevel level : step.levels()) {
      levels
          .addObject()
          .put("vessel", level.vessel())
          .put("staysDry", level.staysDry())
          .put("beforeBelowRim_mm", tenths(level.rim() - level.before()))
          .put("expectedBelowRim_mm", tenths(level.rim() - level.expected()))
          .put("abortBelowRim_mm", tenths(level.rim() - level.abort()));
    }
  }

  private static double tenths(double metres) {
    return Math.round(metres * MM * 10) / 10.0;
  }
}
