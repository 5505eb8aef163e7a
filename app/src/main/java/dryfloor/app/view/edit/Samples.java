package dryfloor.app.view.edit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** What a field holds before somebody fills it in: something sensible rather than nothing. */
final class Samples {

  private static final Pattern QUANTITY = Pattern.compile("([-+0-9.]+)( .+)?");

  private final FileTree tree;
  private final String kind;

  /** Samples for an element of this kind. */
  Samples(FileTree tree, String kind) {
    this.tree = tree;
    this.kind = kind;
  }

  static ObjectNode parse(String json) {
    return (ObjectNode) FileTree.MAPPER.readTree(json);
  }

  /** A vessel of common size, in this shape. */
  static ObjectNode shape(String variant) {
    return parse(
        switch (variant) {
          case "cylinder" -> "{\"cylinder\":{\"diameter\":\"600 mm\",\"height\":\"800 mm\"}}";
          case "frustum" ->
              "{\"frustum\":{\"bottomDiameter\":\"500 mm\",\"rimDiameter\":\"600 mm\",\"height\":\"800 mm\"}}";
          case "outline" ->
              "{\"outline\":{\"height\":\"500 mm\",\"area\":\"0.5 m2\",\"rimLength\":\"3 m\"}}";
          case "table" ->
              "{\"table\":{\"points\":[[\"0 mm\",\"0 L\"],[\"500 mm\",\"250 L\"]],\"rimLength\":\"3 m\"}}";
          default ->
              "{\"box\":{\"length\":\"1000 mm\",\"width\":\"500 mm\",\"height\":\"500 mm\"}}";
        });
  }

  /** An end of a run at the first thing of this kind. */
  Optional<ObjectNode> end(String variant) {
    return tree.ids(List.of(variant)).stream()
        .findFirst()
        .map(
            id -> {
              ObjectNode end = FileTree.MAPPER.createObjectNode().put(variant, id);
              return variant.equals("vessel") ? end.put("at", "0 mm").put("opening", "port") : end;
            });
  }

  /** Something for a field that is not there yet. */
  JsonNode of(String field, JsonNode property) {
    if (property.has("default") && !property.path("default").isContainer()) {
      return property.path("default");
    }
    if (property.path("examples").has(0)) {
      return property.path("examples").get(0);
    }
    if (property.has("enum")) {
      return property.path("enum").get(0);
    }
    if (property.path("type").asString("").equals("array")) {
      return FileTree.MAPPER.createArrayNode().add(item(field, property));
    }
    return Schema.target(property).map(name -> named(field, name)).orElse(StringNode.valueOf(""));
  }

  private JsonNode named(String field, String definition) {
    JsonNode schema = Schema.definition(definition);
    if (definition.equals("drives")) {
      return FileTree.MAPPER.createArrayNode().add(reference(field));
    }
    if (definition.equals("reference")) {
      return reference(field);
    }
    if (definition.equals("along") || definition.equals("height")) {
      return StringNode.valueOf("100 mm");
    }
    if (definition.equals("shape")) {
      return shape("box");
    }
    if (schema.path("examples").has(0)) {
      return schema.path("examples").get(0);
    }
    ObjectNode sample = FileTree.MAPPER.createObjectNode();
    for (var entry : schema.path("properties").properties()) {
      if (Schema.isRequired(definition, entry.getKey())) {
        sample.set(entry.getKey(), of(entry.getKey(), entry.getValue()));
      }
    }
    return sample;
  }

  private JsonNode reference(String field) {
    return StringNode.valueOf(
        Candidates.of(tree, kind, field).stream().findFirst().orElse("nothing-drawn"));
  }

  /** One item for a list that has none. */
  private JsonNode item(String field, JsonNode list) {
    if (field.equals("contents")) {
      return parse("{\"from\":\"0 mm\",\"to\":\"100 mm\",\"volume\":\"1 L\"}");
    }
    return Schema.target(list.path("items"))
        .map(name -> named(field, name))
        .orElseGet(FileTree.MAPPER::createArrayNode);
  }

  /** One more item for a list: like the last, or half-way between the last two of a table. */
  JsonNode oneMore(String field, JsonNode property, ArrayNode list) {
    if (list.isEmpty()) {
      return item(field, property);
    }
    JsonNode last = list.get(list.size() - 1);
    if (last instanceof ArrayNode upper
        && list.size() > 1
        && list.get(list.size() - 2) instanceof ArrayNode lower) {
      ArrayNode middle = FileTree.MAPPER.createArrayNode();
      for (int i = 0; i < upper.size(); i++) {
        middle.add(between(lower.get(i).asString(), upper.get(i).asString()));
      }
      return middle;
    }
    return last.deepCopy();
  }

  private static String between(String one, String other) {
    Matcher a = QUANTITY.matcher(one);
    Matcher b = QUANTITY.matcher(other);
    if (!a.matches() || !b.matches()) {
      return other;
    }
    double middle = (Double.parseDouble(a.group(1)) + Double.parseDouble(b.group(1))) / 2;
    return middle + Optional.ofNullable(b.group(2)).orElse("");
  }
}
