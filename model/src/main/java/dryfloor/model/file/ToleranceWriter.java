package dryfloor.model.file;

import dryfloor.model.Tolerance;
import dryfloor.model.unit.UncertainText;
import dryfloor.model.unit.Units;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts tolerances behind the quantities of a sheet that is otherwise written. That of a quantity
 * which is not drawn any more (the upper points of a table whose rim was lowered) is gone with it.
 */
final class ToleranceWriter {

  private static final Pattern STEP = Pattern.compile("([A-Za-z]+)|\\[(\\d+)]");

  /** Stands for what is not written; no quantity. */
  private static final Object NOTHING = false;

  private static final Sheet NO_SHEET = new Sheet(new Spelling(Units.METRIC));

  private final Sheet root;
  private final Map<String, Sheet> byId = new HashMap<>();

  private ToleranceWriter(Sheet root) {
    this.root = root;
    DrawnIds.lists().forEach(list -> enter(root.fields().getOrDefault(list, NOTHING)));
  }

  /** Puts them all in. */
  static Sheet write(Sheet root, List<Tolerance> tolerances) {
    ToleranceWriter writer = new ToleranceWriter(root);
    tolerances.forEach(writer::write);
    return root;
  }

  private void enter(Object list) {
    if (list instanceof List<?> items) {
      for (Object item : items) {
        if (item instanceof Sheet sheet) {
          byId.put(String.valueOf(sheet.fields().get("id")), sheet);
          enter(sheet.fields().getOrDefault("parts", NOTHING));
        }
      }
    }
  }

  private void write(Tolerance tolerance) {
    Object holder = tolerance.of().isEmpty() ? root : byId.getOrDefault(tolerance.of(), NO_SHEET);
    Matcher steps = STEP.matcher(tolerance.field());
    while (steps.find() && steps.end() < tolerance.field().length()) {
      holder = step(holder, steps);
    }
    Object exact = step(holder, steps);
    if (exact instanceof String || exact instanceof Number) {
      replace(holder, steps, UncertainText.with(tolerance.spread(), exact.toString()));
    }
  }

  private static Object step(Object from, Matcher step) {
    String field = step.group(1);
    if (from instanceof Sheet sheet && field != null) {
      return sheet.fields().getOrDefault(field, NOTHING);
    }
    if (from instanceof List<?> list && field == null) {
      int index = Integer.parseInt(step.group(2));
      return index < list.size() ? list.get(index) : NOTHING;
    }
    return NOTHING;
  }

  /** The last step leads to a field, or to one of a pair, which a sheet makes anew for each. */
  @SuppressWarnings("unchecked")
  private static void replace(Object holder, Matcher step, String text) {
    switch (holder) {
      case Sheet sheet -> sheet.put(step.group(1), text);
      case List<?> pair -> ((List<Object>) pair).set(Integer.parseInt(step.group(2)), text);
      default -> throw new IllegalStateException("a step leads through " + holder);
    }
  }
}
