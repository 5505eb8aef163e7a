package dryfloor.model.file;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every id in the file and what it stands for, known before anything else is read, so that the file
 * may list things in any order.
 */
final class DrawnIds {

  private static final Map<String, Referent> LISTS = new LinkedHashMap<>();

  static {
    LISTS.put("storeys", Referent.STOREY);
    LISTS.put("floors", Referent.FLOOR);
    LISTS.put("vessels", Referent.VESSEL);
    LISTS.put("weirs", Referent.WEIR);
    LISTS.put("junctions", Referent.JUNCTION);
    LISTS.put("supplies", Referent.SUPPLY);
    LISTS.put("drains", Referent.DRAIN);
    LISTS.put("runs", Referent.RUN);
    LISTS.put("circulationPumps", Referent.CIRCULATION_PUMP);
    LISTS.put("circuits", Referent.CIRCUIT);
    LISTS.put("controls", Referent.CONTROL);
  }

  /** The lists of the file in which ids are given. */
  static Set<String> lists() {
    return Collections.unmodifiableSet(LISTS.keySet());
  }

  /** What an id stands for and where it is drawn. */
  record Drawn(Referent referent, Located.Structure node) {}

  private final Map<String, Drawn> byId = new HashMap<>();
  private final Set<FilePlace> repeats = new HashSet<>();
  private int count;

  static DrawnIds of(Located.Structure root, Problems problems) {
    DrawnIds ids = new DrawnIds();
    LISTS.forEach(
        (list, referent) -> {
          for (Located.Structure node : structures(root, list)) {
            ids.enter(node, referent, problems);
            for (Located.Structure part : structures(node, "parts")) {
              ids.enter(part, referentOfPart(part), problems);
            }
          }
        });
    return ids;
  }

  private static List<Located.Structure> structures(Located.Structure node, String list) {
    if (node.find(list).orElse(null) instanceof Located.Sequence sequence) {
      return sequence.items().stream()
          .filter(Located.Structure.class::isInstance)
          .map(Located.Structure.class::cast)
          .toList();
    }
    return List.of();
  }

  private static Referent referentOfPart(Located.Structure part) {
    return switch (textOf(part, "part").orElse("")) {
      case "pump" -> Referent.PUMP;
      case "valve" -> Referent.VALVE;
      default -> Referent.OTHER_PART;
    };
  }

  private void enter(Located.Structure node, Referent referent, Problems problems) {
    count++;
    Optional<String> id = textOf(node, "id");
    if (id.isEmpty()) {
      return;
    }
    Drawn first = byId.putIfAbsent(id.get(), new Drawn(referent, node));
    if (first != null) {
      repeats.add(node.place());
      FilePlace place = node.find("id").map(Located::place).orElse(node.place());
      problems.add(
          place,
          "the id '" + id.get() + "' is taken",
          "give one of the two another id; the first is "
              + first.referent().description()
              + " on line "
              + first.node().place().line());
    }
  }

  static Optional<String> textOf(Located.Structure node, String field) {
    return node.find(field).orElse(null) instanceof Located.Text text
        ? Optional.of(text.text())
        : Optional.empty();
  }

  Optional<Drawn> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The id of the element or part in which this path of the file lies; empty if in none. */
  String ownerOf(String path) {
    return owner(path).map(Map.Entry::getKey).orElse("");
  }

  /** What remains of a path of the file within its element or part. */
  String fieldOf(String path) {
    return owner(path)
        .map(entry -> path.substring(entry.getValue().node().place().path().length() + 1))
        .orElse(path);
  }

  private Optional<Map.Entry<String, Drawn>> owner(String path) {
    return byId.entrySet().stream()
        .filter(entry -> path.startsWith(entry.getValue().node().place().path() + "."))
        .max(Comparator.comparingInt(entry -> entry.getValue().node().place().path().length()));
  }

  /** Whether this object carries an id that was given to an earlier one. */
  boolean isRepeat(Located.Structure node) {
    return repeats.contains(node.place());
  }

  List<String> all(Referent... referents) {
    List<Referent> wanted = Arrays.asList(referents);
    return byId.entrySet().stream()
        .filter(entry -> wanted.contains(entry.getValue().referent()))
        .map(Map.Entry::getKey)
        .filter(id -> !id.isBlank())
        .sorted()
        .toList();
  }

  Set<String> all() {
    return Set.copyOf(byId.keySet());
  }

  /** How many elements and parts the file draws, with or without a sound id. */
  int count() {
    return count;
  }
}
