package dryfloor.app.report;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One outcome as JSON, always metric, the unit at the end of each name. */
final class JsonOutcome {

  private static final double MM = 1000;

  /** What is left of nothing by rounding, in whatever unit. */
  private static final double NOTHING = 1e-15;

  private static final double LITRES = 1000;
  private static final double AN_HOUR = 3600;

  /** Far more digits than the drawing can be true to, few enough to read. */
  private static final MathContext DIGITS = new MathContext(9);

  private final Wording wording;
  private final ObjectNode node;

  JsonOutcome(Wording wording, ObjectNode node) {
    this.wording = wording;
    this.node = node;
  }

  void put(Outcome outcome) {
    node.put("verdict", outcome.verdict().name());
    ending(node.putObject("ending"), outcome.ending());
    margin(node.putObject("margin"), outcome.margin());
    optional(node, "firstSpill_s", outcome.firstSpill(), 1);
    optional(node, "firstWetFloor_s", outcome.firstWetFloor(), 1);
    number(node, "reachedFloors_L", outcome.reachedFloors() * LITRES);
    number(node, "beyondDrawing_L", outcome.beyond() * LITRES);
    ArrayNode vessels = node.putArray("vessels");
    outcome.vessels().forEach(vessel -> vessel(vessels.addObject(), vessel));
    ArrayNode floors = node.putArray("floors");
    outcome.floors().forEach(floor -> floor(floors.addObject(), floor));
    passed(node.putArray("drains"), outcome.drained());
    passed(node.putArray("supplies"), outcome.supplied());
    ArrayNode pumps = node.putArray("pumpsRunDry");
    outcome
        .dryPumps()
        .forEach(dry -> number(named(pumps.addObject(), dry.pump()), "at_s", dry.time()));
    ledger(outcome.ledger());
    story(outcome);
    ArrayNode notes = node.putArray("notes");
    NoteSentence sentence = new NoteSentence(wording);
    outcome.notes().forEach(note -> notes.add(sentence.of(note)));
  }

  static void ending(ObjectNode into, Ending ending) {
    switch (ending) {
      case Ending.AtRest rest -> {
        into.put("kind", "AT_REST");
        number(into, "since_s", rest.time());
      }
      case Ending.Repeats repeats -> {
        into.put("kind", "REPEATS");
        number(into, "since_s", repeats.since());
        number(into, "period_s", repeats.period());
      }
      case Ending.Continues continues -> {
        into.put("kind", "CONTINUES");
        number(into, "since_s", continues.since());
        number(into, "rate_L_per_h", continues.rate() * LITRES * AN_HOUR);
      }
      case Ending.UpAndDown swinging -> {
        into.put("kind", "UP_AND_DOWN");
        number(into, "since_s", swinging.time());
        into.put("place", swinging.place());
        number(into, "swing_mm", (swinging.highest() - swinging.lowest()) * MM);
        number(into, "period_s", swinging.period());
      }
      case Ending.StillMoving moving -> {
        into.put("kind", "STILL_MOVING");
        number(into, "since_s", moving.time());
        into.put("place", moving.place());
        number(into, "speed_mm_per_h", moving.speed() * MM * AN_HOUR);
      }
    }
  }

  private static void margin(ObjectNode into, Outcome.Margin margin) {
    margin.vessel().ifPresent(vessel -> into.put("vessel", vessel));
    number(into, "freeboard_mm", margin.freeboard() * MM);
    number(into, "at_s", margin.time());
  }

  private void vessel(ObjectNode into, Outcome.VesselOutcome vessel) {
    named(into, vessel.id());
    number(into, "levelBefore_mm", (vessel.levelBefore() - vessel.bottom()) * MM);
    number(into, "levelAfter_mm", (vessel.levelAfter() - vessel.bottom()) * MM);
    number(into, "belowRim_mm", (vessel.rim() - vessel.levelAfter()) * MM);
    number(into, "highestLevel_mm", (vessel.highestLevel() - vessel.bottom()) * MM);
    number(into, "highest_s", vessel.highestTime());
    number(into, "volumeBefore_L", vessel.volumeBefore() * LITRES);
    number(into, "volumeAfter_L", vessel.volumeAfter() * LITRES);
    number(into, "spilled_L", vessel.spilled() * LITRES);
    number(into, "salinityBefore_g_per_kg", vessel.salinityBefore());
    number(into, "salinityAfter_g_per_kg", vessel.salinityAfter());
  }

  private void floor(ObjectNode into, Outcome.FloorOutcome floor) {
    named(into, floor.id());
    number(into, "received_L", floor.received() * LITRES);
    number(into, "standing_L", floor.volume() * LITRES);
    number(into, "depth_mm", floor.depth() * MM);
    optional(into, "firstWet_s", floor.firstWet(), 1);
  }

  private void passed(ArrayNode list, List<Outcome.Passed> passed) {
    passed.forEach(
        place -> number(named(list.addObject(), place.id()), "volume_L", place.volume() * LITRES));
  }

  private void ledger(Ledger ledger) {
    ArrayNode entries = node.putArray("ledger");
    for (Ledger.Entry entry : ledger.entries()) {
      ObjectNode into = entries.addObject();
      into.put("path", entry.path()).put("way", entry.way().name());
      into.put("from", entry.from()).put("to", entry.to());
      number(into, "volume_L", entry.volume() * LITRES);
      number(into, "salt_kg", entry.salt());
    }
    ArrayNode standing = node.putArray("standing");
    for (Ledger.Standing held : ledger.standing()) {
      ObjectNode into = standing.addObject().put("id", held.id());
      number(into, "before_L", held.before() * LITRES);
      number(into, "after_L", held.after() * LITRES);
    }
    number(node, "ledgerUntil_s", ledger.until());
    number(node, "imbalance_L", ledger.imbalance() * LITRES);
  }

  private void story(Outcome outcome) {
    ArrayNode events = node.putArray("story");
    StorySentence sentence = new StorySentence(wording, outcome);
    for (StoryEvent event : outcome.story()) {
      ObjectNode into = events.addObject();
      number(into, "at_s", event.time());
      into.put("what", event.what().name()).put("subject", event.subject());
      if (!event.other().isEmpty()) {
        into.put("other", event.other());
      }
      optional(into, "volume_L", event.volume(), LITRES);
      into.put("sentence", sentence.of(event));
    }
  }

  private ObjectNode named(ObjectNode into, String id) {
    return into.put("id", id).put("name", wording.names().of(id));
  }

  static void optional(ObjectNode into, String name, OptionalDouble value, double factor) {
    if (value.isPresent()) {
      number(into, name, value.getAsDouble() * factor);
    }
  }

  static void number(ObjectNode into, String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", which no answer may be");
    }
    into.put(name, rounded(value));
  }

  static double rounded(double value) {
    double told = Math.abs(value) < NOTHING ? 0 : value;
    return new BigDecimal(told).round(DIGITS).stripTrailingZeros().doubleValue();
  }
}
