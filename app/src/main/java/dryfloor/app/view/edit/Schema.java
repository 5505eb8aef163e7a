package dryfloor.app.view.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** What the file format says of its fields: their order, choices, defaults and what they mean. */
final class Schema {

  private static final String REFERENCE = "#/$defs/";
  private static final JsonNode ROOT = load();

  private Schema() {}

  private static JsonNode load() {
    try (InputStream in =
        Objects.requireNonNull(Schema.class.getResourceAsStream("installation.schema.json"))) {
      return FileTree.MAPPER.readTree(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode definition(String name) {
    return ROOT.path("$defs").path(name);
  }

  /** Name of the definition that a property refers to. */
  static Optional<String> target(JsonNode property) {
    return property
        .path("$ref")
        .asStringOpt()
        .filter(ref -> ref.startsWith(REFERENCE))
        .map(ref -> ref.substring(REFERENCE.length()));
  }

  static boolean isRequired(String definition, String field) {
    return definition(definition)
        .path("required")
        .valueStream()
        .anyMatch(required -> required.asString("").equals(field));
  }

  /** What there is to choose from; nothing for a field without choice. */
  static List<String> choices(JsonNode property) {
    return property.path("enum").valueStream().map(JsonNode::asString).toList();
  }

  /** What a property means, in its own words or those of what it refers to. */
  static String description(JsonNode property) {
    return property
        .path("description")
        .asStringOpt()
        .or(
            () ->
                target(property)
                    .flatMap(name -> definition(name).path("description").asStringOpt()))
        .orElse("");
  }
}
