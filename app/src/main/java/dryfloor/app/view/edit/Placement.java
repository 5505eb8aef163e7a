package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Puts something new into a drawing, of common size, at or near what is chosen. Of several places
 * where it could go the first one counts that makes sense.
 */
public final class Placement {

  private final FileTree tree;
  private final Surroundings near;

  private Placement(Installation drawing, Optional<String> chosen, Units units) {
    this.tree = FileTree.of(drawing, units);
    this.near = new Surroundings(drawing, chosen);
  }

  /**
   * Puts one more into a drawing.
   *
   * @param chosen id of what is chosen, near which it belongs
   */
  public static Placed of(
      Installation drawing, Placeable what, Optional<String> chosen, Units units) {
    Placement placement = new Placement(drawing, chosen, units);
    Optional<Placed> best = Optional.empty();
    for (ObjectNode candidate : placement.candidates(what)) {
      Placed placed = placement.put(what, candidate);
      if (placed.trial() instanceof Trial.Sound) {
        return placed;
      }
      best = best.isPresent() ? best : Optional.of(placed);
    }
    return best.orElseGet(
        () -> Placed.refused("there is nothing yet to which it belongs", "draw that first"));
  }

  private Placed put(Placeable what, ObjectNode element) {
    FileTree next = tree.copy();
    String id = Ids.giveFree(next, element);
    if (element.has("part")) {
      String run = near.run().map(Run::id).orElse("");
      ObjectNode into = next.find(run).map(FileTree.Branch::node).orElseThrow();
      ArrayNode parts =
          into.path("parts") instanceof ArrayNode list ? list : into.putArray("parts");
      boolean first = what == Placeable.PUMP || what == Placeable.STRAINER;
      parts.insert(first ? 0 : parts.size(), element);
    } else {
      next.list(list(what)).add(element);
    }
    circuit(element).ifPresent(circuit -> drawCircuit(next, circuit));
    return new Placed(next.read(), id);
  }

  /** The circuit that something needs. */
  private static Optional<String> circuit(ObjectNode element) {
    return element
        .path("power")
        .path("circuit")
        .asStringOpt()
        .or(() -> element.path("powered").path("circuit").asStringOpt());
  }

  private static void drawCircuit(FileTree next, String circuit) {
    if (next.find(circuit).isEmpty()) {
      next.list("circuits").add(FileTree.MAPPER.createObjectNode().put("id", circuit));
    }
  }

  private static String list(Placeable what) {
    return switch (what) {
      case STOREY -> "storeys";
      case FLOOR -> "floors";
      case VESSEL, BASIN -> "vessels";
      case WEIR -> "weirs";
      case SUPPLY -> "supplies";
      case DRAIN -> "drains";
      case CIRCUIT -> "circuits";
      case CIRCULATION_PUMP -> "circulationPumps";
      case LEVEL_SWITCH, LEAK_SENSOR, TIMER, HAND_SWITCH -> "controls";
      case PUMP,
          VALVE,
          POWERED_VALVE,
          FLOAT_VALVE,
          CHECK_VALVE,
          SIPHON_BREAK,
          JOINT,
          STRAINER,
          RESTRICTOR,
          DEVICE ->
          "parts";
    };
  }

  /** What it could be like, the most likely first. */
  private List<ObjectNode> candidates(Placeable what) {
    return switch (what) {
      case STOREY -> storey();
      case FLOOR -> floor();
      case VESSEL -> standing("vessel", "display", "500 mm", "400 mm");
      case BASIN -> standing("basin", "basin", "80 mm", "0 mm");
      case WEIR -> weirs();
      case SUPPLY ->
          at(
              near.storey().map(s -> s.elevation() + 1).orElse(1.0),
              "{'id':'supply','kind':'mains','elevation':'%s','protection':'airGap','pressure':'3 bar'}");
      case DRAIN ->
          at(
              near.lowest().map(s -> s.elevation() - 0.05).orElse(0.0),
              "{'id':'drain','elevation':'%s'}");
      case CIRCUIT -> one("{'id':'circuit'}");
      case CIRCULATION_PUMP -> circulationPumps();
      case PUMP ->
          inRun(
              "{'part':'pump','id':'pump','curve':[['0 L/min','4 m'],['60 L/min','0 m']],"
                  + "'power':{'circuit':'"
                  + circuit()
                  + "'},'stoppedLoss':4}");
      case VALVE -> inRun("{'part':'valve','id':'valve','kv':10,'hand':'isolate'}");
      case POWERED_VALVE ->
          inRun(
              "{'part':'valve','id':'powered-valve','kv':5,'powered':{'circuit':'"
                  + circuit()
                  + "','rest':'closed'}}");
      case FLOAT_VALVE -> floatValves();
      case CHECK_VALVE ->
          inRun("{'part':'checkValve','id':'check-valve','crackingHead':'50 mm','loss':2.5}");
      case SIPHON_BREAK -> siphonBreaks();
      case JOINT -> atMiddle("{'part':'joint','id':'joint','kind':'union','elevation':'%s'}");
      case STRAINER -> inRun("{'part':'strainer','id':'strainer','loss':2}");
      case RESTRICTOR -> inRun("{'part':'restrictor','id':'restrictor','kv':1}");
      case DEVICE ->
          atMiddle("{'part':'device','id':'device','kind':'reactor','elevation':'%s','loss':5}");
      case LEVEL_SWITCH -> levelSwitches();
      case LEAK_SENSOR -> leakSensors();
      case TIMER ->
          one("{'control':'timer','id':'timer','longestRun':'10 min','drives':" + driven() + "}");
      case HAND_SWITCH ->
          one("{'control':'handSwitch','id':'switch','on':true,'drives':" + driven() + "}");
    };
  }

  private static ObjectNode parse(String json) {
    return Samples.parse(json.replace('\'', '"'));
  }

  private static List<ObjectNode> one(String json) {
    return List.of(parse(json));
  }

  private static List<ObjectNode> at(double elevation, String json) {
    return one(json.formatted(metres(elevation)));
  }

  private static String metres(double metres) {
    return String.format(Locale.ROOT, "%.3f m", metres);
  }

  private List<ObjectNode> storey() {
    double above = near.highest().map(s -> s.elevation() + s.height() + 0.3).orElse(0.0);
    return at(above, "{'id':'storey','elevation':'%s','height':'2.5 m'}");
  }

  private List<ObjectNode> floor() {
    return near.storey().stream()
        .map(
            storey ->
                parse(
                    "{'id':'floor','storey':'"
                        + storey.id()
                        + "','area':'12 m2','sill':'20 mm','sillLength':'900 mm'}"))
        .toList();
  }

  private List<ObjectNode> standing(String id, String role, String height, String level) {
    return near.places().stream()
        .map(
            place ->
                parse(
                    "{'id':'%s','role':'%s','shape':{'box':{'length':'1000 mm','width':'500 mm','height':'%s'}},'standsIn':'%s','level':'%s'}"
                        .formatted(id, role, height, place, level)))
        .toList();
  }

  private List<ObjectNode> weirs() {
    List<ObjectNode> all = new ArrayList<>();
    for (Vessel from : near.vessels()) {
      for (Vessel to : near.drawing().vessels()) {
        String lower = from.rim() <= to.rim() ? from.id() : to.id();
        if (!from.id().equals(to.id()) && !to.isBasin()) {
          all.add(
              parse(
                  "{'id':'weir','kind':'lip','from':'%s','to':'%s','crest':'50 mm below %s.rim','length':'300 mm'}"
                      .formatted(from.id(), to.id(), lower)));
        }
      }
    }
    return all;
  }

  private List<ObjectNode> circulationPumps() {
    return near.vessels().stream()
        .map(
            vessel ->
                parse(
                    "{'id':'circulation-pump','vessel':'%s','inlet':'%s','flow':'50 L/min','power':{'circuit':'%s'}}"
                        .formatted(
                            vessel.id(),
                            metres((vessel.level() - vessel.bottom()) / 2),
                            circuit())))
        .toList();
  }

  private String circuit() {
    return tree.ids(List.of("circuit")).stream().findFirst().orElse("circuit");
  }

  private String driven() {
    return Candidates.of(tree, "", "drives").stream()
        .findFirst()
        .map(id -> "['" + id + "']")
        .orElse("[]");
  }

  private List<ObjectNode> inRun(String json) {
    return near.run().map(run -> one(standing(run, json))).orElse(List.of());
  }

  /** Where nothing says on what the water of the run lands, the part says it. */
  private String standing(Run run, String json) {
    boolean lands =
        List.of("pump", "joint", "device").stream().anyMatch(k -> json.contains("'part':'" + k));
    return run.standsIn().isPresent() || !lands
        ? json
        : json.substring(0, json.length() - 1)
            + near.places().stream().findFirst().map(p -> ",'standsIn':'" + p + "'}").orElse("}");
  }

  private List<ObjectNode> atMiddle(String json) {
    return near.run()
        .map(run -> one(standing(run, json).formatted(metres(near.middle(run)))))
        .orElse(List.of());
  }

  private List<ObjectNode> floatValves() {
    return near.run().map(near::target).stream()
        .flatMap(target -> Stream.concat(target.stream(), near.vessels().stream()))
        .map(
            vessel ->
                parse(
                    "{'part':'floatValve','id':'float-valve','kv':1,'vessel':'%s','closesAt':'%s','band':'20 mm'}"
                        .formatted(
                            vessel.id(), metres(Math.max(vessel.level() - vessel.bottom(), 0.02)))))
        .toList();
  }

  /** Under the water of the vessel into which the run leads, or in the open at its top. */
  private List<ObjectNode> siphonBreaks() {
    List<ObjectNode> all = new ArrayList<>();
    near.run()
        .flatMap(near::target)
        .filter(vessel -> vessel.level() > vessel.bottom() + 0.02)
        .ifPresent(
            vessel ->
                all.add(
                    parse(
                        "{'part':'siphonBreak','id':'siphon-break','at':'%s','diameter':'8 mm','coveredBy':'%s'}"
                            .formatted(
                                metres(vessel.level() - vessel.bottom() - 0.02), vessel.id()))));
    near.run()
        .ifPresent(
            run ->
                all.add(
                    parse(
                        "{'part':'siphonBreak','id':'siphon-break','at':'%s','diameter':'8 mm'}"
                            .formatted(metres(near.middle(run))))));
    return all;
  }

  private List<ObjectNode> levelSwitches() {
    return near.vessels().stream()
        .map(
            vessel -> {
              double depth = Math.max(vessel.level() - vessel.bottom(), 0.02);
              return parse(
                  "{'control':'levelSwitch','id':'level-switch','in':'%s','lower':'%s','upper':'%s','action':'fills','drives':%s}"
                      .formatted(vessel.id(), metres(depth - 0.01), metres(depth), driven()));
            })
        .toList();
  }

  private List<ObjectNode> leakSensors() {
    return near.places().stream()
        .map(
            place ->
                parse(
                    "{'control':'leakSensor','id':'leak-sensor','in':'%s','depth':'5 mm','drives':%s}"
                        .formatted(place, driven())))
        .toList();
  }
}
