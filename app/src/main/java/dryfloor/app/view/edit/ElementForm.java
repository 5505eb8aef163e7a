package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.IntNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Every field of one element or part, to be filled in one by one. Heights and units are written as
 * in a file; a number without its unit gets that of the value that it replaces.
 */
public final class ElementForm {

  private static final Pattern BARE = Pattern.compile("\\s*[-+]?[0-9]+([.,][0-9]+)?\\s*");
  private static final Pattern UNIT = Pattern.compile("[-+0-9.]+ (\\S+)");

  private final FileTree tree;
  private final FileTree.Branch branch;

  private ElementForm(FileTree tree, FileTree.Branch branch) {
    this.tree = tree;
    this.branch = branch;
  }

  /** The form of an element; none for an id that is nobody's. */
  public static Optional<ElementForm> of(Installation drawing, String id, Units units) {
    FileTree tree = FileTree.of(drawing, units);
    return tree.find(id).map(branch -> new ElementForm(tree, branch));
  }

  public String id() {
    return branch.id();
  }

  /** What it is, as in "Siphon break". */
  public String kind() {
    return Fields.label(branch.kind());
  }

  public List<Field> fields() {
    return new Fields(tree, branch).all();
  }

  /** What else it may be given. */
  public List<Addition> additions() {
    return new Fields(tree, branch).additions();
  }

  /** The part of a problem's path that is within this element; none if it lies elsewhere. */
  public Optional<String> pathWithin(Problem problem) {
    String own = branch.path();
    boolean within =
        problem.path().equals(own)
            || problem.path().startsWith(own + ".")
            || problem.path().startsWith(own + "[");
    return within
        ? Optional.of(problem.path().equals(own) ? "" : problem.path().substring(own.length() + 1))
        : Optional.empty();
  }

  /** Fills in a field; an empty text leaves out what may be left out. */
  public Trial set(Field field, String text) {
    String typed = text.strip();
    if (field.kind() == Field.Kind.VARIANT) {
      return vary(field, typed);
    }
    if (typed.isEmpty() && field.removable()) {
      return remove(field);
    }
    FileTree next = tree.copy();
    if (field.pointer().equals("/id")) {
      Renaming.rename(next.root(), branch.id(), typed);
    } else {
      JsonNode old = branch.node().at(field.pointer());
      put(own(next), field.pointer(), node(old, typed));
    }
    return next.read();
  }

  /** Leaves out a field or an item of a list. */
  public Trial remove(Field field) {
    FileTree next = tree.copy();
    JsonPointer pointer = JsonPointer.compile(field.pointer());
    JsonNode parent = own(next).at(pointer.head());
    switch (parent) {
      case ArrayNode list -> {
        list.remove(pointer.last().getMatchingIndex());
        if (list.isEmpty() && !Schema.isRequired(branch.kind(), name(pointer.head()))) {
          own(next).remove(name(pointer.head()));
        }
      }
      case ObjectNode object -> object.remove(name(pointer));
      default -> {}
    }
    return next.read();
  }

  /** Gives it something more, with a value to begin with. */
  public Trial add(Addition addition) {
    FileTree next = tree.copy();
    JsonPointer pointer = JsonPointer.compile(addition.pointer());
    boolean listed = name(pointer).equals("-");
    JsonPointer target = listed ? pointer.head() : pointer;
    Samples samples = new Samples(next, branch.kind());
    JsonNode property = property(target);
    if (listed && own(next).at(target) instanceof ArrayNode list) {
      JsonNode item = samples.oneMore(name(target), property, list);
      list.insert(item instanceof ArrayNode ? Math.max(0, list.size() - 1) : list.size(), item);
    } else {
      put(own(next), addition.pointer(), samples.of(name(target), property));
    }
    return next.read();
  }

  private ObjectNode own(FileTree other) {
    return other.find(branch.id()).map(FileTree.Branch::node).orElseThrow();
  }

  private static String name(JsonPointer pointer) {
    return Optional.ofNullable(pointer.last()).map(JsonPointer::getMatchingProperty).orElse("");
  }

  private Trial vary(Field field, String variant) {
    FileTree next = tree.copy();
    Samples samples = new Samples(next, branch.kind());
    if (field.pointer().endsWith("/#drive")) {
      ObjectNode valve = own(next);
      valve.remove(List.of("hand", "powered"));
      valve.set(variant, samples.of(variant, property(JsonPointer.compile("/" + variant))));
    } else if (field.pointer().equals("/shape")) {
      own(next).set("shape", Samples.shape(variant));
    } else {
      samples.end(variant).ifPresent(end -> put(own(next), field.pointer(), end));
    }
    return next.read();
  }

  /** What the schema says of a field, by the way that leads to it. */
  private JsonNode property(JsonPointer pointer) {
    String definition = branch.kind();
    JsonNode property = Schema.definition(definition);
    for (JsonPointer step = pointer; !step.matches(); step = step.tail()) {
      String field = step.getMatchingProperty();
      property = Schema.definition(definition).path("properties").path(field);
      definition =
          Schema.target(property)
              .or(() -> Optional.of(field))
              .map(name -> endDefinition(name, pointer))
              .orElse("");
    }
    return property;
  }

  private String endDefinition(String name, JsonPointer pointer) {
    boolean end = name.equals("runEnd");
    return end && branch.node().at(pointer.head()).has("floor")
        ? "endAtFloor"
        : end ? "endAtVessel" : name;
  }

  private static void put(ObjectNode element, String pointer, JsonNode value) {
    JsonPointer way = JsonPointer.compile(pointer);
    switch (element.at(way.head())) {
      case ArrayNode list -> list.set(way.last().getMatchingIndex(), value);
      case ObjectNode object -> object.set(name(way), value);
      default -> throw new IllegalArgumentException("there is no place for " + pointer);
    }
  }

  private static JsonNode node(JsonNode old, String typed) {
    if (old.isBoolean()) {
      return BooleanNode.valueOf(Boolean.parseBoolean(typed));
    }
    boolean bare = BARE.matcher(typed).matches();
    if (old.isNumber() && bare) {
      BigDecimal number = new BigDecimal(typed.strip().replace(',', '.'));
      return number.scale() <= 0 && number.precision() < 9
          ? IntNode.valueOf(number.intValue())
          : DecimalNode.valueOf(number);
    }
    Matcher unit = UNIT.matcher(old.asString(""));
    return StringNode.valueOf(
        bare && unit.matches() ? typed.replace(',', '.') + " " + unit.group(1) : typed);
  }
}
