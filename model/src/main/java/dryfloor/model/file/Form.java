package dryfloor.model.file;

import java.util.List;
import java.util.stream.Stream;

/** The fields of every object in the file, as the JSON Schema has them too. */
@SuppressWarnings("ImmutableEnumChecker") // both lists are of a kind that never changes
enum Form {
  INSTALLATION(
      required("dryfloor", "name", "water", "storeys", "floors", "vessels"),
      optional(
          "$schema",
          "away",
          "weirs",
          "junctions",
          "supplies",
          "drains",
          "runs",
          "circulationPumps",
          "circuits",
          "controls",
          "failures")),
  WATER(required("salinity"), optional("temperature")),
  STOREY(required("id", "elevation", "height"), optional("name")),
  FLOOR(
      required("id", "storey", "area", "sill", "sillLength"),
      optional("name", "offset", "spillsTo")),
  VESSEL(
      required("id", "role", "shape", "standsIn"),
      optional("name", "raised", "level", "contents", "salinity", "spillEdge", "emptyMass")),
  SHAPE(none(), optional("box", "cylinder", "frustum", "outline", "table")),
  BOX(required("length", "width", "height"), optional()),
  CYLINDER(required("diameter", "height"), optional()),
  FRUSTUM(required("bottomDiameter", "rimDiameter", "height"), optional()),
  OUTLINE(required("height"), optional("corners", "area", "rimLength")),
  TABLE(required("points", "rimLength"), optional()),
  CONTENTS(required("from", "to", "volume"), optional()),
  WEIR(required("id", "kind", "from", "to", "crest", "length"), optional("name")),
  JUNCTION(required("id", "elevation"), optional("name")),
  SUPPLY(
      required("id", "kind", "elevation", "protection"),
      optional("name", "pressure", "maximumFlow", "salinity")),
  DRAIN(required("id", "elevation"), optional("name", "surchargeLevel")),
  RUN(
      required("id", "from", "to", "duty", "bore", "length"),
      optional(
          "name",
          "roughness",
          "fittings",
          "extraLoss",
          "waypoints",
          "parts",
          "vented",
          "standsIn")),
  END_AT_VESSEL(required("vessel", "at", "opening"), optional()),
  END_AT_FLOOR(required("floor"), optional("at", "opening")),
  END_AT_JUNCTION(required("junction"), optional()),
  END_AT_SUPPLY(required("supply"), optional()),
  END_AT_DRAIN(required("drain"), optional()),
  FITTINGS(
      none(),
      optional(
          "elbow90",
          "longBend90",
          "elbow45",
          "returnBend180",
          "teeThrough",
          "teeBranch",
          "union",
          "sharpEntrance",
          "roundedEntrance",
          "protrudingEntrance",
          "exit",
          "gateValveOpen",
          "ballValveOpen",
          "butterflyValveOpen",
          "footValve")),
  WAYPOINT(required("elevation"), optional("along")),
  PUMP(
      required("part", "id", "curve", "power"),
      optional("name", "along", "speed", "kind", "stoppedLoss", "primesAgain", "standsIn")),
  VALVE(required("part", "id", "kv"), optional("name", "along", "opening", "hand", "powered")),
  FLOAT_VALVE(
      required("part", "id", "kv", "vessel", "closesAt", "band"), optional("name", "along")),
  CHECK_VALVE(required("part", "id", "crackingHead", "loss"), optional("name", "along")),
  SIPHON_BREAK(
      required("part", "id", "at", "diameter"), optional("name", "along", "count", "coveredBy")),
  JOINT(required("part", "id", "kind", "elevation"), optional("name", "along", "standsIn")),
  STRAINER(required("part", "id", "loss"), optional("name", "along")),
  RESTRICTOR(required("part", "id", "kv"), optional("name", "along")),
  DEVICE(
      required("part", "id", "kind", "elevation", "loss"),
      optional("name", "along", "holds", "cupOverflow", "standsIn")),
  POWER(required("circuit"), optional("onReturn", "delay")),
  VALVE_POWER(required("circuit", "rest"), optional("onReturn", "delay")),
  CIRCULATION_PUMP(required("id", "vessel", "inlet", "flow", "power"), optional("name")),
  CIRCUIT(required("id"), optional("name", "backup", "breaker")),
  LEVEL_SWITCH(
      required("control", "id", "in", "lower", "upper", "action", "drives"), optional("name")),
  LEAK_SENSOR(required("control", "id", "in", "depth", "drives"), optional("name", "delay")),
  TIMER(required("control", "id", "longestRun", "drives"), optional("name")),
  HAND_SWITCH(required("control", "id", "on", "drives"), optional("name")),
  FAILURES(none(), optional("skipped", "topUps", "sequences", "dripArea", "outage", "surge")),
  SKIPPED(required("failure", "reason"), optional()),
  TOP_UP(required("vessel", "volume"), optional()),
  SEQUENCE(required("id", "events"), optional("name")),
  EVENT_THAT_BEGINS(required("at", "begins"), optional()),
  EVENT_THAT_ENDS(required("at", "ends"), optional()),
  EVENT_THAT_POURS(required("at", "pours", "into"), optional("salinity")),
  EVENT_THAT_TAKES(required("at", "takes", "from"), optional("downTo"));

  private final List<String> required;
  private final List<String> fields;

  Form(List<String> required, List<String> optional) {
    this.required = required;
    this.fields = Stream.of(required, optional).flatMap(List::stream).toList();
  }

  List<String> required() {
    return required;
  }

  List<String> fields() {
    return fields;
  }

  /** As it is called in messages and in the schema: {@code END_AT_FLOOR} is endAtFloor. */
  String word() {
    return Words.of(this);
  }

  private static List<String> none() {
    return List.of();
  }

  private static List<String> required(String... fields) {
    return List.of(fields);
  }

  private static List<String> optional(String... fields) {
    return List.of(fields);
  }
}
