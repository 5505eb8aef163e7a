package dryfloor.app.view.edit;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** What a field that refers to something drawn can refer to. */
final class Candidates {

  private Candidates() {}

  /**
   * Ids for a field of this name.
   *
   * @param kind of the element that has it
   */
  static List<String> of(FileTree tree, String kind, String field) {
    return switch (field) {
      case "storey" -> tree.ids(List.of("storey"));
      case "standsIn", "spillsTo", "in" -> tree.ids(List.of("floor", "vessel"));
      case "vessel", "coveredBy" -> tree.ids(List.of("vessel"));
      case "from", "to" -> kind.equals("weir") ? tree.ids(List.of("vessel")) : List.of();
      case "circuit" -> tree.ids(List.of("circuit"));
      case "floor", "junction", "supply", "drain" -> tree.ids(List.of(field));
      case "drives" -> driven(tree);
      default -> List.of();
    };
  }

  /** Pumps and powered valves. */
  private static List<String> driven(FileTree tree) {
    List<String> ids = new ArrayList<>(tree.ids(List.of("pump", "circulationPump")));
    tree.branches().stream()
        .filter(branch -> branch.kind().equals("valve"))
        .map(FileTree.Branch::node)
        .filter(node -> node.has("powered"))
        .map(node -> node.path("id"))
        .map(JsonNode::asString)
        .forEach(ids::add);
    return ids;
  }
}
