package dryfloor.app.view.edit;

/**
 * Something that may be given for an element and is not.
 *
 * @param pointer to where it goes within the element; ends with {@code /-} for one more of a list
 * @param label in words
 * @param description what it means
 */
public record Addition(String pointer, String label, String description) {}
