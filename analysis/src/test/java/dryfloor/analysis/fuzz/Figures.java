package dryfloor.analysis.fuzz;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Every number of an answer by its path, such as {@code .vessels[2].levelAfter}. */
final class Figures {

  private final Map<String, Double> byPath = new LinkedHashMap<>();

  private Figures() {}

  static Map<String, Double> of(Outcome outcome) {
    Figures figures = new Figures();
    figures.collect("", outcome);
    return figures.byPath;
  }

  private void collect(String path, Object value) {
    switch (value) {
      case Double number -> byPath.put(path, number);
      case OptionalDouble number -> number.ifPresent(present -> byPath.put(path, present));
      case Optional<?> something -> something.ifPresent(present -> collect(path, present));
      case Trajectory levels -> collectLevels(path, levels);
      case List<?> items -> {
        for (int i = 0; i < items.size(); i++) {
          collect(path + "[" + i + "]", items.get(i));
        }
      }
      case Record record -> {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
          collect(path + "." + component.getName(), valueOf(component, record));
        }
      }
      default -> {}
    }
  }

  private void collectLevels(String path, Trajectory levels) {
    for (int moment = 0; moment < levels.moments(); moment++) {
      byPath.put(path + "[" + moment + "].time", levels.time(moment));
      for (String place : levels.places()) {
        byPath.put(path + "[" + moment + "]." + place, levels.level(moment, place));
      }
    }
  }

  private static Object valueOf(RecordComponent component, Record owner) {
    try {
      return component.getAccessor().invoke(owner);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component.toString(), e);
    }
  }
}
