package dryfloor.model.element;

/**
 * A tee or manifold where runs meet.
 *
 * @param elevation of its axis (m)
 */
public record Junction(String id, String name, double elevation) implements Element {}
