package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Bounds;
import dryfloor.analysis.limit.Decider;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.SafeRange;
import dryfloor.analysis.limit.Scale;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The limits of one drawing as JSON: heights in mm above the bottom, volumes in L. */
final class JsonLimits {

  private final Wording wording;
  private final ObjectNode node;

  JsonLimits(Wording wording, ObjectNode node) {
    this.wording = wording;
    this.node = node;
  }

  void put(LimitResult result) {
    bounds(node.putObject("bounds").put("dryFloors", true), result.bounds());
    ArrayNode limits = node.putArray("limits");
    result.answers().forEach(answer -> put(limits.addObject(), answer));
    new JsonRemedies(wording).put(node.putArray("remedies"), result.remedies());
  }

  private static void bounds(ObjectNode into, Bounds bounds) {
    bounds.keeps().ifPresent(share -> JsonOutcome.number(into, "keepsWater", share));
    bounds
        .salinity()
        .ifPresent(
            band -> {
              JsonOutcome.number(into, "leastSalinity_g_per_kg", band.least());
              JsonOutcome.number(into, "mostSalinity_g_per_kg", band.most());
            });
  }

  private void put(ObjectNode into, LimitAnswer answer) {
    Scale scale = answer.scale();
    into.put("id", PropertyWords.id(answer.property()));
    into.put("name", new PropertyWords(wording).name(answer.property()));
    into.put("of", answer.property().of());
    number(into, "today", scale, scale.today());
    switch (answer) {
      case LimitAnswer.Found found -> {
        into.put("kind", "FOUND");
        found.mark().ifPresent(mark -> number(into, "mark", scale, mark));
        ranges(into.putArray("holds"), scale, found.holds());
        ArrayNode mends = into.putArray("mends");
        found
            .mends()
            .forEach(
                mend -> {
                  ObjectNode one = mends.addObject();
                  one.put("failure", FailureNames.id(mend.failure()));
                  ranges(one.putArray("ranges"), scale, mend.ranges());
                });
      }
      case LimitAnswer.HeldByOthers held -> {
        into.put("kind", "HELD_BY_OTHERS");
        number(into, "settled", scale, held.settled());
      }
      case LimitAnswer.Cancelled cancelled -> into.put("kind", "CANCELLED");
    }
  }

  private static void ranges(ArrayNode into, Scale scale, List<SafeRange> ranges) {
    for (SafeRange range : ranges) {
      ObjectNode one = into.addObject();
      number(one, "from", scale, range.from());
      number(one, "to", scale, range.to());
      decider(one.putObject("below"), scale, range.below());
      decider(one.putObject("above"), scale, range.above());
    }
  }

  private static void decider(ObjectNode into, Scale scale, Decider decider) {
    switch (decider) {
      case Decider.FloorWet wet -> failure(into.put("kind", "FLOOR_WET"), wet.failure());
      case Decider.WaterLost lost -> {
        failure(into.put("kind", "WATER_LOST"), lost.failure()).put("vessel", lost.vessel());
        JsonOutcome.number(into, "share", lost.share());
      }
      case Decider.SalinityOut out -> {
        failure(into.put("kind", "SALINITY_OUT"), out.failure()).put("vessel", out.vessel());
        JsonOutcome.number(into, "salinity_g_per_kg", out.salinity());
      }
      case Decider.NoAnswer open ->
          failure(into.put("kind", "NO_ANSWER"), open.failure()).put("reason", open.reason());
      case Decider.NotSound unsound ->
          into.put("kind", "NOT_SOUND").put("reason", unsound.reason());
      case Decider.FilledUpAgain filled ->
          number(into.put("kind", "FILLED_UP_AGAIN"), "settled", scale, filled.settled());
      case Decider.PumpIdle idle ->
          into.put("kind", "PUMP_IDLE").put("pump", idle.pump()).put("sucksAir", idle.sucksAir());
      case Decider.EmergencyDrainRuns spare ->
          into.put("kind", "EMERGENCY_DRAIN_RUNS").put("run", spare.run());
      case Decider.NotDrawable fault ->
          into.put("kind", "NOT_DRAWABLE").put("reason", fault.reason());
      case Decider.NotLookedAt end -> into.put("kind", "NOT_LOOKED_AT");
    }
  }

  private static ObjectNode failure(ObjectNode into, Failure failure) {
    return into.put("failure", FailureNames.id(failure));
  }

  static void number(ObjectNode into, String name, Scale scale, double value) {
    switch (scale.kind()) {
      case HEIGHT -> JsonOutcome.number(into, name + "_mm", (value - scale.base()) * 1000);
      case WIDTH -> JsonOutcome.number(into, name + "_mm", value * 1000);
      case VOLUME -> JsonOutcome.number(into, name + "_L", value * 1000);
      case SHARE -> JsonOutcome.number(into, name, value);
    }
  }
}
