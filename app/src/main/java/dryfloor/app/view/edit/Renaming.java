package dryfloor.app.view.edit;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** Gives something drawn another id, wherever it is named. */
final class Renaming {

  private static final Set<String> NAMING =
      Set.of(
          "id",
          "storey",
          "standsIn",
          "spillsTo",
          "in",
          "into",
          "vessel",
          "coveredBy",
          "from",
          "to",
          "circuit",
          "floor",
          "junction",
          "supply",
          "drain");

  private static final Set<String> NAMING_A_FAILURE = Set.of("failure", "begins", "ends");

  private Renaming() {}

  static void rename(JsonNode node, String old, String next) {
    switch (node) {
      case ObjectNode object -> {
        for (String field : List.copyOf(object.propertyNames())) {
          JsonNode value = object.path(field);
          if (NAMING.contains(field) && value.asString("").equals(old)) {
            object.put(field, next);
          } else if (NAMING_A_FAILURE.contains(field)) {
            object.put(field, failure(value.asString(""), old, next));
          } else if (field.equals("drives") && value instanceof ArrayNode driven) {
            rename(driven, old, next);
          } else {
            rename(value, old, next);
          }
        }
      }
      case ArrayNode list -> {
        for (int i = 0; i < list.size(); i++) {
          if (list.get(i).isString() && list.get(i).asString().equals(old)) {
            list.set(i, StringNode.valueOf(next));
          } else {
            rename(list.get(i), old, next);
          }
        }
      }
      default -> {}
    }
  }

  /** A failure's id is its mode and the ids of its components, with dots between. */
  private static String failure(String id, String old, String next) {
    return String.join(
        ".",
        Arrays.stream(id.split("\\.", -1)).map(word -> word.equals(old) ? next : word).toList());
  }
}
