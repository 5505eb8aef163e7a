package dryfloor.model.file;

import dryfloor.model.IdInWords;
import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads the fields of one object and reports what is wrong with them.
 *
 * <p>A quantity that can't be read is not a number. Anything else that can't be read makes the
 * object <em>flawed</em>: a stand-in is returned so that the rest of the object is still looked at,
 * and the object is left out of the drawing afterwards.
 */
final class Fields {

  private static final int LONGEST_LIST = 1000;
  private static final int LONGEST_NAME = 200;

  /** What stands on a page in one line. */
  private static final Set<String> NAMES = Set.of("name", "breaker");

  private final Located.Structure node;
  private final Form form;
  private final Context context;
  private boolean flawed;

  Fields(Located.Structure node, Form form, Context context) {
    this.node = node;
    this.form = form;
    this.context = context;
    FieldNames.check(node, form, context.problems());
  }

  /** Reads one object; empty if it is flawed. */
  <T> Optional<T> read(Function<Fields, T> reader) {
    T value = reader.apply(this);
    return flawed ? Optional.empty() : Optional.of(value);
  }

  Context context() {
    return context;
  }

  FilePlace place() {
    return node.place();
  }

  boolean isOf(Form other) {
    return form == other;
  }

  boolean has(String field) {
    return node.find(field).isPresent();
  }

  /** Reports something wrong with a field, or with the whole object if the field is not there. */
  void reject(String field, String message, String remedy) {
    flawed = true;
    problems().add(placeOf(field), message, remedy);
  }

  String id() {
    flawed |= context.ids().isRepeat(node);
    return text("id");
  }

  /** The name, or the id with spaces for dashes. */
  String nameOr(String id) {
    return has("name") ? text("name") : IdInWords.of(id);
  }

  String text(String field) {
    Optional<Located> value = present(field, "a text in quotes");
    if (value.isPresent() && value.get() instanceof Located.Text text) {
      checkWords(field, text.text());
      return text.text();
    }
    value.ifPresent(other -> mismatch(field, other, "a text in quotes"));
    return "";
  }

  Optional<String> optionalText(String field) {
    return has(field) ? Optional.of(text(field)) : Optional.empty();
  }

  private void checkWords(String field, String text) {
    Optional<String> unfit = VisibleText.firstUnfit(text);
    if (unfit.isPresent()) {
      reject(
          field,
          field + " holds the invisible " + unfit.get(),
          "letters, digits, spaces and signs only; delete it or type the text anew");
    } else if (NAMES.contains(field) && text.length() > LONGEST_NAME) {
      reject(
          field,
          "a " + field + " of " + text.length() + " characters",
          "at most " + LONGEST_NAME + ", so that it fits on a page");
    } else if (text.isBlank()) {
      reject(field, field + " is empty", "write a word");
    }
  }

  double quantity(String field, QuantityKind kind, Sign sign) {
    return present(field, kind.wanted())
        .map(value -> QuantityValue.read(value, field, kind, sign, context))
        .orElse(Double.NaN);
  }

  double quantityOr(String field, QuantityKind kind, Sign sign, double usual) {
    return has(field) ? quantity(field, kind, sign) : usual;
  }

  OptionalDouble optionalQuantity(String field, QuantityKind kind, Sign sign) {
    return has(field) ? OptionalDouble.of(quantity(field, kind, sign)) : OptionalDouble.empty();
  }

  /** Elevation (m) of a height that is measured from {@code base} unless it says otherwise. */
  double height(String field, double base) {
    Optional<Located> value = present(field, "a height such as \"580 mm\"");
    if (value.isEmpty()) {
      return Double.NaN;
    }
    if (value.get() instanceof Located.Text text) {
      HeightText height = HeightText.parse(text.text());
      ReferenceCheck.check(height, value.get().place(), context);
      height.note(text, context.uncertainTexts());
      double elevation = context.elevations().elevationOf(height, base);
      if (Math.abs(elevation - base) > QuantityKind.LENGTH.largest()) {
        reject(
            field,
            "'" + text.text() + "' is absurdly far from what " + field + " is measured from",
            "at most 1000 m above or below it");
      }
      return elevation;
    }
    return QuantityValue.read(value.get(), field, QuantityKind.LENGTH, Sign.ANY, context);
  }

  double heightOr(String field, double base, double usual) {
    return has(field) ? height(field, base) : usual;
  }

  int count(String field) {
    Optional<Located> value = present(field, "a whole number such as 2");
    if (value.isPresent()
        && value.get() instanceof Located.Numeral number
        && number.literal().matches("[1-9][0-9]{0,3}")) {
      return Integer.parseInt(number.literal());
    }
    value.ifPresent(
        other -> reject(field, field + " is no count", "a whole number from 1 to 9999, such as 2"));
    return 1;
  }

  boolean truth(String field) {
    Optional<Located> value = present(field, "true or false");
    if (value.isPresent() && value.get() instanceof Located.Truth truth) {
      return truth.value();
    }
    value.ifPresent(other -> mismatch(field, other, "true or false, without quotes"));
    return false;
  }

  boolean truthOr(String field, boolean usual) {
    return has(field) ? truth(field) : usual;
  }

  <E extends Enum<E>> E choice(String field, Class<E> choices) {
    E[] all = choices.getEnumConstants();
    List<String> words = Arrays.stream(all).map(Words::of).toList();
    Optional<Located> value = present(field, "one of " + String.join(", ", words));
    if (value.isPresent() && value.get() instanceof Located.Text text) {
      String word = text.text();
      if (words.contains(word)) {
        return all[words.indexOf(word)];
      }
      reject(field, field + " cannot be '" + word + "'", Words.suggestion(word, words));
    } else {
      value.ifPresent(other -> mismatch(field, other, "one of " + String.join(", ", words)));
    }
    return all[0];
  }

  <E extends Enum<E>> E choiceOr(String field, E usual) {
    return has(field) ? choice(field, usual.getDeclaringClass()) : usual;
  }

  String reference(String field, Referent... referents) {
    String id = text(field);
    if (!id.isBlank()) {
      ReferenceCheck.check(id, placeOf(field), field, context, referents);
    }
    return id;
  }

  Optional<String> optionalReference(String field, Referent... referents) {
    return has(field) ? Optional.of(reference(field, referents)) : Optional.empty();
  }

  List<String> references(String field, Referent... referents) {
    List<String> all = new ArrayList<>();
    for (Located item : items(field)) {
      if (item instanceof Located.Text text) {
        ReferenceCheck.check(text.text(), text.place(), field, context, referents);
        all.add(text.text());
      } else {
        flawed = true;
        problems().add(item.place(), item.description() + " is no id", "an id in quotes");
      }
    }
    return all;
  }

  /** The sound ones among the objects of a list that must be there. */
  <T> List<T> list(String field, Form itemForm, Function<Fields, T> reader) {
    return items(field).stream()
        .flatMap(item -> structure(item, itemForm, reader).stream())
        .toList();
  }

  <T> List<T> listOrNone(String field, Form itemForm, Function<Fields, T> reader) {
    return has(field) ? list(field, itemForm, reader) : List.of();
  }

  /**
   * An object within this one; the stand-in if it is missing or flawed, and so is this one then.
   */
  <T> T object(String field, Form objectForm, Function<Fields, T> reader, T standIn) {
    Optional<T> value =
        present(field, "an object { ... }").flatMap(node -> structure(node, objectForm, reader));
    flawed |= value.isEmpty();
    return value.orElse(standIn);
  }

  <T> Optional<T> structure(Located item, Form itemForm, Function<Fields, T> reader) {
    if (item instanceof Located.Structure structure) {
      return new Fields(structure, itemForm, context).read(reader);
    }
    problems()
        .add(item.place(), item.description() + " is no " + itemForm.word(), "an object { ... }");
    return Optional.empty();
  }

  /** An object whose form depends on what it holds; the stand-in if missing or flawed. */
  <T> T variant(
      String field,
      Function<Located.Structure, Optional<Form>> formOf,
      Function<Fields, T> reader,
      T standIn) {
    Optional<T> value =
        present(field, "an object { ... }").flatMap(node -> variantItem(node, formOf, reader));
    flawed |= value.isEmpty();
    return value.orElse(standIn);
  }

  <T> Optional<T> variantItem(
      Located item,
      Function<Located.Structure, Optional<Form>> formOf,
      Function<Fields, T> reader) {
    if (item instanceof Located.Structure structure) {
      Optional<Form> itemForm = formOf.apply(structure);
      if (itemForm.isPresent()) {
        return structure(item, itemForm.get(), reader);
      }
    }
    VariantProblem.report(item, problems());
    return Optional.empty();
  }

  /** Whether these are all known; the object is flawed otherwise. */
  boolean sound(double... values) {
    boolean sound = Arrays.stream(values).allMatch(Double::isFinite);
    flawed |= !sound;
    return sound;
  }

  /** Marks the object as flawed by something that has been reported already. */
  void flaw() {
    flawed = true;
  }

  List<Located> items(String field) {
    Optional<Located> value = present(field, "a list [ ... ]");
    if (value.isPresent() && value.get() instanceof Located.Sequence sequence) {
      return limited(field, sequence.items());
    }
    value.ifPresent(other -> mismatch(field, other, "a list [ ... ]"));
    return List.of();
  }

  /** Only the lists of the installation itself may be long. */
  private List<Located> limited(String field, List<Located> items) {
    if (form == Form.INSTALLATION || items.size() <= LONGEST_LIST) {
      return items;
    }
    reject(
        field,
        "a list of " + items.size() + " items",
        "a list of at most " + LONGEST_LIST + " items");
    return List.of();
  }

  FilePlace placeOf(String field) {
    return node.find(field)
        .map(Located::place)
        .orElseGet(() -> new FilePlace(place().line(), place().column(), place().pathOf(field)));
  }

  Optional<Located> present(String field, String wanted) {
    if (!form.fields().contains(field)) {
      throw new IllegalStateException("the form " + form.word() + " does not list " + field);
    }
    Optional<Located> value = node.find(field);
    if (value.isEmpty()) {
      reject(field, "'" + field + "' is missing", "add \"" + field + "\": " + wanted);
    }
    return value;
  }

  private void mismatch(String field, Located found, String wanted) {
    reject(field, found.description() + " where " + wanted + " belongs", "write " + wanted);
  }

  private Problems problems() {
    return context.problems();
  }
}
