package dryfloor.analysis.generated;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Kinds of records and choices, by name: which a type can hold, and which a value does hold. */
final class Kinds {

  private final Set<String> names = new TreeSet<>();

  private Kinds() {}

  /** Every kind of record and every choice that something of this type can be made of. */
  static Set<String> possibleIn(Class<?> type) {
    Kinds kinds = new Kinds();
    kinds.addType(type);
    return kinds.names;
  }

  /** Every kind of record and every choice that this value is made of. */
  static Set<String> in(Object value) {
    Kinds kinds = new Kinds();
    kinds.addValue(value);
    return kinds.names;
  }

  private void addType(Type type) {
    if (type instanceof ParameterizedType generic) {
      Arrays.stream(generic.getActualTypeArguments()).forEach(this::addType);
    } else if (type instanceof Class<?> plain) {
      addClass(plain);
    }
  }

  private void addClass(Class<?> type) {
    if (type.isSealed() && type.isInterface()) {
      Arrays.stream(type.getPermittedSubclasses()).forEach(this::addClass);
    } else if (type.isEnum()) {
      Arrays.stream(type.getEnumConstants()).forEach(this::addValue);
    } else if (type.isRecord() && names.add(type.getName())) {
      Arrays.stream(type.getRecordComponents())
          .map(RecordComponent::getGenericType)
          .forEach(this::addType);
    }
  }

  private void addValue(Object value) {
    switch (value) {
      case Enum<?> choice -> names.add(choice.getDeclaringClass().getName() + "." + choice.name());
      case Collection<?> many -> many.forEach(this::addValue);
      case Optional<?> maybe -> maybe.ifPresent(this::addValue);
      case Record drawn -> {
        names.add(drawn.getClass().getName());
        for (RecordComponent component : drawn.getClass().getRecordComponents()) {
          addValue(valueOf(component, drawn));
        }
      }
      default -> {}
    }
  }

  private static Object valueOf(RecordComponent component, Record owner) {
    try {
      return component.getAccessor().invoke(owner);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(component + " can't be read", e);
    }
  }
}
