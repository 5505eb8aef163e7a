package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Something drawn as a piece of a file, to be copied from one drawing into another or into the same
 * one once more: {@code {"vessels": [{...}]}}.
 */
public final class Snippet {

  private static final String PARTS = "parts";

  private Snippet() {}

  /** The text of something drawn; none for an id that is nobody's. */
  public static Optional<String> copy(Installation drawing, String id, Units units) {
    return FileTree.of(drawing, units)
        .find(id)
        .map(
            branch -> {
              ObjectNode snippet = FileTree.MAPPER.createObjectNode();
              snippet.putArray(list(branch)).add(branch.node().deepCopy());
              return snippet.toPrettyString();
            });
  }

  private static String list(FileTree.Branch branch) {
    String path = branch.path();
    String list = path.substring(0, path.lastIndexOf('['));
    return list.endsWith("." + PARTS) ? PARTS : list;
  }

  /**
   * Puts a copied text into a drawing, under an id of its own. Where it names what this drawing
   * does not have, something of the same kind near what is chosen takes its place.
   *
   * @param chosen id of what is chosen
   */
  public static Placed paste(
      Installation drawing, String text, Optional<String> chosen, Units units) {
    Optional<ObjectNode> snippet = parse(text);
    Optional<String> list = snippet.flatMap(node -> node.propertyNames().stream().findFirst());
    Optional<ObjectNode> element =
        snippet.flatMap(
            node ->
                list.map(name -> node.path(name).path(0))
                    .filter(ObjectNode.class::isInstance)
                    .map(ObjectNode.class::cast));
    return element
        .map(node -> paste(drawing, list.orElseThrow(), node, chosen, units))
        .orElseGet(
            () ->
                Placed.refused(
                    "what was copied is nothing of a drawing", "copy something drawn first"));
  }

  private static Optional<ObjectNode> parse(String text) {
    try {
      JsonNode node = FileTree.MAPPER.readTree(text);
      return node instanceof ObjectNode object ? Optional.of(object) : Optional.empty();
    } catch (JacksonException notOurs) {
      return Optional.empty();
    }
  }

  private static Placed paste(
      Installation drawing, String list, ObjectNode element, Optional<String> chosen, Units units) {
    FileTree tree = FileTree.of(drawing, units);
    Surroundings near = new Surroundings(drawing, chosen);
    Optional<Placed> first = Optional.empty();
    for (ObjectNode candidate : candidates(tree, near, element)) {
      Placed placed = put(tree.copy(), near, list, candidate);
      if (placed.trial() instanceof Trial.Sound) {
        return placed;
      }
      first = first.isPresent() ? first : Optional.of(placed);
    }
    return first.orElseThrow();
  }

  /** As it was, then standing in each other place near by. */
  private static List<ObjectNode> candidates(FileTree tree, Surroundings near, ObjectNode element) {
    ObjectNode known = element.deepCopy();
    adopt(tree, known);
    return Stream.concat(
            Stream.of(known),
            near.places().stream()
                .filter(place -> known.has("standsIn"))
                .map(place -> known.deepCopy().put("standsIn", place)))
        .toList();
  }

  /** Replaces what is named and not drawn here. */
  private static void adopt(FileTree tree, JsonNode node) {
    switch (node) {
      case ObjectNode object -> {
        for (String field : List.copyOf(object.propertyNames())) {
          List<String> candidates = Candidates.of(tree, object.has("crest") ? "weir" : "", field);
          JsonNode value = object.path(field);
          if (value.isString() && !candidates.isEmpty() && !candidates.contains(value.asString())) {
            object.put(field, candidates.getFirst());
          } else if (field.equals("drives") && value instanceof ArrayNode drives) {
            drives.removeIf(driven -> !candidates.contains(driven.asString()));
          } else {
            adopt(tree, value);
          }
        }
      }
      case ArrayNode items -> items.forEach(item -> adopt(tree, item));
      default -> {}
    }
  }

  private static Placed put(FileTree tree, Surroundings near, String list, ObjectNode element) {
    if (!list.equals(PARTS)) {
      renameParts(tree, element);
      String id = Ids.giveFree(tree, element);
      tree.list(list).add(element);
      return new Placed(tree.read(), id);
    }
    return near.run()
        .flatMap(run -> tree.find(run.id()))
        .map(
            run -> {
              String id = Ids.giveFree(tree, element);
              ObjectNode node = run.node();
              ArrayNode parts =
                  node.path(PARTS) instanceof ArrayNode known ? known : node.putArray(PARTS);
              parts.add(element);
              return new Placed(tree.read(), id);
            })
        .orElseGet(() -> Placed.refused("there is no run for it to sit in", "draw a run first"));
  }

  /** The parts of a copied run are other parts. */
  private static void renameParts(FileTree tree, ObjectNode run) {
    run.path(PARTS)
        .valueStream()
        .map(ObjectNode.class::cast)
        .forEach(part -> Ids.giveFree(tree, part));
  }
}
