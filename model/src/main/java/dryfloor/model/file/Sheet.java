package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One object of a file being written, its fields in order. Values are texts, {@link Number}s,
 * booleans, sheets and lists of these.
 */
final class Sheet {

  private final Spelling spelling;
  private final Map<String, Object> fields = new LinkedHashMap<>();

  Sheet(Spelling spelling) {
    this.spelling = spelling;
  }

  Map<String, Object> fields() {
    return fields;
  }

  Sheet put(String field, Object value) {
    fields.put(field, value);
    return this;
  }

  Sheet putIfAny(String field, List<?> values) {
    return values.isEmpty() ? this : put(field, values);
  }

  Sheet put(String field, Optional<String> id) {
    id.ifPresent(value -> put(field, value));
    return this;
  }

  Sheet word(String field, Enum<?> constant) {
    return put(field, Words.of(constant));
  }

  Sheet quantity(String field, QuantityKind kind, double inside) {
    return put(field, spelling.quantity(kind, inside));
  }

  Sheet quantity(String field, QuantityKind kind, OptionalDouble inside) {
    inside.ifPresent(value -> quantity(field, kind, value));
    return this;
  }

  Sheet length(String field, double metres) {
    return quantity(field, QuantityKind.LENGTH, metres);
  }

  /**
   * A height above where it is measured from (m). As a difference of elevations it can miss zero by
   * rounding, which must not be written as a height of its own.
   */
  Sheet height(String field, double metres) {
    return length(field, Math.abs(metres) < QuantityKind.LENGTH.smallest() ? 0 : metres);
  }

  Sheet number(String field, double value) {
    return put(field, new BigDecimal(Spelling.digits(value)));
  }

  /** A list of pairs such as a pump curve. */
  List<Object> pair(QuantityKind first, double a, QuantityKind second, double b) {
    List<Object> pair = new ArrayList<>();
    pair.add(spelling.quantity(first, a));
    pair.add(spelling.quantity(second, b));
    return pair;
  }
}
