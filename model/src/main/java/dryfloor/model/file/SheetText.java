package dryfloor.model.file;

import java.util.List;
import java.util.Map;
import tools.jackson.core.io.JsonStringEncoder;

/**
 * Lays a sheet out as text: what fits on a line stays on a line, so that a vessel, a curve or a
 * list of ids can be read at a glance.
 */
final class SheetText {

  private static final int LINE = 100;

  private SheetText() {}

  static String of(Sheet sheet) {
    StringBuilder text = new StringBuilder();
    write(sheet, 0, text);
    return text.append('\n').toString();
  }

  private static void write(Object value, int indent, StringBuilder text) {
    String flat = flat(value);
    boolean fits = indent > 0 && indent + flat.length() <= LINE;
    if (fits || !(value instanceof Sheet || value instanceof List<?>)) {
      text.append(flat);
    } else if (value instanceof Sheet sheet) {
      String separator = "{\n";
      for (Map.Entry<String, Object> field : sheet.fields().entrySet()) {
        text.append(separator).append(" ".repeat(indent + 2));
        text.append(quoted(field.getKey())).append(": ");
        write(field.getValue(), indent + 2, text);
        separator = ",\n";
      }
      text.append('\n').append(" ".repeat(indent)).append('}');
    } else if (value instanceof List<?> list) {
      String separator = "[\n";
      for (Object item : list) {
        text.append(separator).append(" ".repeat(indent + 2));
        write(item, indent + 2, text);
        separator = ",\n";
      }
      text.append('\n').append(" ".repeat(indent)).append(']');
    }
  }

  private static String flat(Object value) {
    if (value instanceof Sheet sheet) {
      return String.join(
              ", ",
              sheet.fields().entrySet().stream()
                  .map(field -> quoted(field.getKey()) + ": " + flat(field.getValue()))
                  .toList())
          .transform(fields -> fields.isEmpty() ? "{}" : "{ " + fields + " }");
    }
    if (value instanceof List<?> list) {
      return "[" + String.join(", ", list.stream().map(SheetText::flat).toList()) + "]";
    }
    return value instanceof String string ? quoted(string) : value.toString();
  }

  private static String quoted(String text) {
    return "\"" + String.valueOf(JsonStringEncoder.getInstance().quoteAsCharArray(text)) + "\"";
  }
}
