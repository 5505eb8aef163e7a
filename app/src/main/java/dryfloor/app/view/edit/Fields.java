package dryfloor.app.view.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Lists the fields of an element as its form shows them, and what else it may be given. */
final class Fields {

  private static final List<String> ENDS =
      List.of("vessel", "floor", "junction", "supply", "drain");
  private static final List<String> DRIVES = List.of("hand", "powered");

  private final FileTree tree;
  private final String kind;
  private final List<Field> fields = new ArrayList<>();
  private final List<Addition> additions = new ArrayList<>();

  Fields(FileTree tree, FileTree.Branch branch) {
    this.tree = tree;
    this.kind = branch.kind();
    structure(branch.node(), branch.kind(), "", "");
  }

  List<Field> all() {
    return List.copyOf(fields);
  }

  List<Addition> additions() {
    return List.copyOf(additions);
  }

  /** "spillEdge" is "Spill edge". */
  static String label(String field) {
    String spaced = field.replaceAll("([a-z])([A-Z0-9])", "$1 $2").toLowerCase(Locale.ROOT);
    return spaced.isEmpty()
        ? spaced
        : Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
  }

  private void structure(ObjectNode node, String definition, String pointer, String path) {
    if (definition.equals("valve")) {
      String drive = node.has("powered") ? "powered" : "hand";
      field(pointer + "/#drive", path, "Moved by", drive, Field.Kind.VARIANT, DRIVES, "", false);
    }
    for (var entry : Schema.definition(definition).path("properties").properties()) {
      String name = entry.getKey();
      JsonNode property = entry.getValue();
      boolean hidden = property.has("const") || name.equals("parts");
      if (!hidden) {
        property(node, definition, name, property, pointer, path);
      }
    }
  }

  private void property(
      ObjectNode node,
      String definition,
      String name,
      JsonNode property,
      String pointer,
      String path) {
    String here = pointer + "/" + name;
    String herePath = path.isEmpty() ? name : path + "." + name;
    boolean optional = !Schema.isRequired(definition, name);
    if (node.has(name)) {
      value(node.path(name), name, property, here, herePath, optional);
    } else if (!DRIVES.contains(name)) {
      additions.add(new Addition(here, label(name), Schema.description(property)));
    }
  }

  private void value(
      JsonNode value,
      String name,
      JsonNode property,
      String pointer,
      String path,
      boolean optional) {
    switch (value) {
      case ArrayNode list -> list(list, name, property, pointer, path);
      case ObjectNode inner -> object(inner, name, property, pointer, path, optional);
      default -> scalar(value, name, property, pointer, path, optional);
    }
  }

  private void scalar(
      JsonNode value,
      String name,
      JsonNode property,
      String pointer,
      String path,
      boolean optional) {
    List<String> choices = Schema.choices(property);
    List<String> candidates = Candidates.of(tree, kind, name);
    Field.Kind how =
        value.isBoolean()
            ? Field.Kind.SWITCH
            : !choices.isEmpty()
                ? Field.Kind.CHOICE
                : !candidates.isEmpty() ? Field.Kind.REFERENCE : Field.Kind.TEXT;
    field(
        pointer,
        path,
        label(name),
        value.asString(),
        how,
        choices.isEmpty() ? candidates : choices,
        Schema.description(property),
        optional);
  }

  private void object(
      ObjectNode inner,
      String name,
      JsonNode property,
      String pointer,
      String path,
      boolean optional) {
    String definition = Schema.target(property).orElse("");
    String text = Schema.description(property);
    switch (definition) {
      case "shape" -> {
        String variant = inner.propertyNames().stream().findFirst().orElse("box");
        List<String> variants =
            List.copyOf(Schema.definition("shape").path("properties").propertyNames());
        field(pointer, path, label(name), variant, Field.Kind.VARIANT, variants, text, false);
        structure(
            (ObjectNode) inner.path(variant),
            variant,
            pointer + "/" + variant,
            path + "." + variant);
      }
      case "runEnd" -> {
        String at = ENDS.stream().filter(inner::has).findFirst().orElse("vessel");
        List<String> variants =
            ENDS.stream().filter(end -> !tree.ids(List.of(end)).isEmpty()).toList();
        field(pointer, path, label(name), at, Field.Kind.VARIANT, variants, text, false);
        structure(inner, "endAt" + label(at), pointer, path);
      }
      default -> {
        field(pointer, path, label(name), "", Field.Kind.HEADING, List.of(), text, optional);
        structure(inner, definition, pointer, path);
      }
    }
  }

  private void list(ArrayNode list, String name, JsonNode property, String pointer, String path) {
    Optional<String> definition = Schema.target(property.path("items"));
    for (int i = 0; i < list.size(); i++) {
      String here = pointer + "/" + i;
      String herePath = path + "[" + i + "]";
      String title = label(name) + " " + (i + 1);
      switch (list.get(i)) {
        case ObjectNode item -> {
          field(here, herePath, title, "", Field.Kind.HEADING, List.of(), "", true);
          structure(item, definition.orElse(""), here, herePath);
        }
        case ArrayNode pair -> pair(pair, property, here, herePath, title);
        default ->
            field(
                here,
                herePath,
                title,
                list.get(i).asString(),
                Field.Kind.REFERENCE,
                Candidates.of(tree, kind, name),
                Schema.description(property),
                true);
      }
    }
    additions.add(
        new Addition(
            pointer + "/-", label(name) + " " + (list.size() + 1), Schema.description(property)));
  }

  private void pair(ArrayNode pair, JsonNode property, String pointer, String path, String title) {
    field(pointer, path, title, "", Field.Kind.HEADING, List.of(), "", true);
    for (int i = 0; i < pair.size(); i++) {
      JsonNode measure = property.path("items").path("prefixItems").path(i);
      field(
          pointer + "/" + i,
          path + "[" + i + "]",
          label(Schema.target(measure).orElse("")),
          pair.get(i).asString(),
          Field.Kind.TEXT,
          List.of(),
          Schema.description(measure),
          false);
    }
  }

  private void field(
      String pointer,
      String path,
      String label,
      String text,
      Field.Kind how,
      List<String> options,
      String description,
      boolean removable) {
    List<String> offered =
        options.isEmpty() || options.contains(text)
            ? options
            : Stream.concat(Stream.of(text), options.stream()).toList();
    fields.add(new Field(pointer, path, label, text, how, offered, description, removable));
  }
}
