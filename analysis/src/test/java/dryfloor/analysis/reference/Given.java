package dryfloor.analysis.reference;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/**
 * One object of the table, read strictly: a field that is missing is an error, and so is one that
 * nobody asked for.
 */
final class Given {

  private final String where;
  private final JsonNode node;
  private final Set<String> asked = new TreeSet<>();

  Given(String where, JsonNode node) {
    this.where = where;
    this.node = node;
  }

  boolean has(String name) {
    return node.has(name);
  }

  double number(String name) {
    JsonNode value = field(name);
    if (!value.isNumber()) {
      throw wrong("'" + name + "' must be a number");
    }
    return value.doubleValue();
  }

  /** A number that counts as nothing where a row does not speak of it. */
  double numberOrZero(String name) {
    return has(name) ? number(name) : 0.0;
  }

  double[] numbers(String name) {
    JsonNode values = field(name);
    return IntStream.range(0, values.size())
        .mapToDouble(i -> values.get(i).doubleValue())
        .toArray();
  }

  String text(String name) {
    JsonNode value = field(name);
    if (!value.isString() || value.stringValue().isBlank()) {
      throw wrong("'" + name + "' must be a text");
    }
    return value.stringValue();
  }

  <E extends Enum<E>> E oneOf(Class<E> kind, String name) {
    String constant = text(name);
    try {
      return Enum.valueOf(kind, constant);
    } catch (IllegalArgumentException unknown) {
      throw wrong("'" + name + "' is " + constant + ", which is no " + kind.getSimpleName());
    }
  }

  Given object(String name) {
    return new Given(where + "." + name, field(name));
  }

  List<Given> objects(String name) {
    return StreamSupport.stream(field(name).spliterator(), false)
        .map(item -> new Given(where + "." + name, item))
        .toList();
  }

  Set<String> names() {
    return Set.copyOf(node.propertyNames());
  }

  /** Says that everything was asked for that is to be. */
  void finish() {
    Set<String> left = new TreeSet<>(node.propertyNames());
    left.removeAll(asked);
    if (!left.isEmpty()) {
      throw wrong("nothing uses " + left);
    }
  }

  private JsonNode field(String name) {
    asked.add(name);
    if (!node.has(name)) {
      throw wrong("'" + name + "' is missing");
    }
    return node.get(name);
  }

  private IllegalArgumentException wrong(String what) {
    return new IllegalArgumentException("Outside checks, " + where + ": " + what);
  }
}
