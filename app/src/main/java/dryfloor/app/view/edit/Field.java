package dryfloor.app.view.edit;

import java.util.List;

/**
 * A field of an element as a form shows it.
 *
 * @param pointer to it within the element, as in {@code /shape/box/length}
 * @param path as problems name it within the element, as in {@code shape.box.length}
 * @param label in words
 * @param text of its value
 * @param kind how it is filled in
 * @param options to choose from
 * @param description what it means
 * @param removable whether it may be left out
 */
public record Field(
    String pointer,
    String path,
    String label,
    String text,
    Kind kind,
    List<String> options,
    String description,
    boolean removable) {

  public Field {
    options = List.copyOf(options);
  }

  /** How a field is filled in. */
  public enum Kind {
    /** Not at all: it is the head of those that follow. */
    HEADING,
    /** By a text, which for a quantity has its unit. */
    TEXT,
    /** By one of its options. */
    CHOICE,
    /** By the id of something drawn. */
    REFERENCE,
    /** By yes or no. */
    SWITCH,
    /** By one of its options, which decides what other fields there are. */
    VARIANT
  }
}
