package dryfloor.model.fuzz;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Everything that a drawing says: words and numbers by their paths, such as {@code
 * .runs[2].parts[0].along}.
 */
record Leaves(Map<String, Object> byPath) {

  /** Lengths are added up, and digits are left out when they are written. */
  private static final double BILLIONTH = 1e-9;

  private static final Map<Class<?>, RecordComponent[]> COMPONENTS = new ConcurrentHashMap<>();

  static Leaves of(Record drawing) {
    Map<String, Object> leaves = new LinkedHashMap<>();
    collect("", drawing, leaves);
    return new Leaves(leaves);
  }

  private static void collect(String path, Object value, Map<String, Object> leaves) {
    switch (value) {
      case Record drawn -> {
        leaves.put(path + " kind", drawn.getClass().getSimpleName());
        for (RecordComponent component : componentsOf(drawn)) {
          collect(path + "." + component.getName(), valueOf(component, drawn), leaves);
        }
      }
      case List<?> items -> {
        leaves.put(path + " size", items.size());
        for (int i = 0; i < items.size(); i++) {
          collect(path + "[" + i + "]", items.get(i), leaves);
        }
      }
      case OptionalDouble number -> {
        leaves.put(path + " given", number.isPresent());
        number.ifPresent(present -> leaves.put(path, present));
      }
      default -> leaves.put(path, value);
    }
  }

  private static RecordComponent[] componentsOf(Record drawn) {
    return COMPONENTS.computeIfAbsent(drawn.getClass(), Class::getRecordComponents);
  }

  private static Object valueOf(RecordComponent component, Record owner) {
    try {
      return component.getAccessor().invoke(owner);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component.toString(), e);
    }
  }

  /** A number that is none, by its path. */
  Optional<String> notANumber() {
    return byPath.entrySet().stream()
        .filter(leaf -> leaf.getValue() instanceof Double number && !Double.isFinite(number))
        .map(leaf -> leaf.getKey() + " is " + leaf.getValue())
        .findFirst();
  }

  /** Where other leaves differ by more than rounding. */
  Optional<String> difference(Leaves others) {
    if (!byPath.keySet().equals(others.byPath.keySet())) {
      return Optional.of("other things are drawn: " + others.byPath);
    }
    return byPath.entrySet().stream()
        .filter(leaf -> !same(leaf.getValue(), others.at(leaf.getKey())))
        .map(leaf -> leaf.getKey() + " was " + leaf.getValue() + ", is " + others.at(leaf.getKey()))
        .findFirst();
  }

  private Object at(String path) {
    return Optional.ofNullable(byPath.get(path)).orElseThrow();
  }

  private static boolean same(Object one, Object other) {
    if (one instanceof Double a && other instanceof Double b) {
      return Math.abs(a - b) <= BILLIONTH * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
    }
    return one.equals(other);
  }
}
