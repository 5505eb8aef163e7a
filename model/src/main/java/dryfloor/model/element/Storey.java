package dryfloor.model.element;

/**
 * A storey of the building.
 *
 * @param elevation of its finished floor (m)
 * @param height from finished floor to ceiling (m)
 */
public record Storey(String id, String name, double elevation, double height) implements Element {}
