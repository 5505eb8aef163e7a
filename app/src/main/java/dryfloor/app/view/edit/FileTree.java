package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A drawing as its file would have it, to be changed field by field. What a file may leave out
 * because it follows from heights is left out, so that it goes on to follow them.
 */
final class FileTree {

  static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  private static final List<String> LISTS =
      List.of(
          "storeys",
          "floors",
          "vessels",
          "weirs",
          "junctions",
          "supplies",
          "drains",
          "runs",
          "circulationPumps",
          "circuits",
          "controls");

  private final ObjectNode root;

  FileTree(ObjectNode root) {
    this.root = root;
  }

  /**
   * An element or part in the tree.
   *
   * @param list that it is in
   * @param place in that list
   * @param path as problems name it: {@code runs[2].parts[0]}
   * @param kind as the schema calls it
   */
  record Branch(ArrayNode list, int place, String path, String kind) {

    ObjectNode node() {
      return (ObjectNode) list.get(place);
    }

    String id() {
      return node().path("id").asString("");
    }
  }

  /** The tree of a drawing, its quantities in these units. */
  static FileTree of(Installation drawing, Units units) {
    ObjectNode root = (ObjectNode) MAPPER.readTree(InstallationWriter.text(drawing, units));
    FileTree tree = new FileTree(root);
    Distances.leaveOutWhatFollows(tree, drawing);
    return tree;
  }

  FileTree copy() {
    return new FileTree(root.deepCopy());
  }

  ObjectNode root() {
    return root;
  }

  /** Every element and every part, in the order of the file. */
  List<Branch> branches() {
    List<Branch> branches = new ArrayList<>();
    for (String list : LISTS) {
      collect(list, root.path(list), branches);
    }
    return branches;
  }

  Optional<Branch> find(String id) {
    return branches().stream().filter(branch -> branch.id().equals(id)).findFirst();
  }

  /** Ids of everything of these kinds. */
  List<String> ids(List<String> kinds) {
    return branches().stream()
        .filter(branch -> kinds.contains(branch.kind()))
        .map(Branch::id)
        .toList();
  }

  /** The list of a kind of element, made if there is none. */
  ArrayNode list(String name) {
    return root.path(name) instanceof ArrayNode list ? list : root.putArray(name);
  }

  /** The drawing that the file would be read as. */
  Trial read() {
    return switch (InstallationFile.readText(root.toString())) {
      case Reading.Read read -> new Trial.Sound(read.installation());
      case Reading.Rejected rejected -> new Trial.Refused(rejected.problems());
    };
  }

  private static void collect(String path, JsonNode list, List<Branch> branches) {
    if (list instanceof ArrayNode items) {
      for (int place = 0; place < items.size(); place++) {
        Branch branch =
            new Branch(items, place, path + "[" + place + "]", kind(path, items.get(place)));
        branches.add(branch);
        if (branch.kind().equals("run")) {
          collect(branch.path() + ".parts", branch.node().path("parts"), branches);
        }
      }
    }
  }

  private static String kind(String path, JsonNode node) {
    return switch (path) {
      case "supplies" -> "supply";
      case "controls" -> node.path("control").asString("");
      case "storeys",
          "floors",
          "vessels",
          "weirs",
          "junctions",
          "drains",
          "runs",
          "circulationPumps",
          "circuits" ->
          path.substring(0, path.length() - 1);
      default -> node.path("part").asString("");
    };
  }
}
