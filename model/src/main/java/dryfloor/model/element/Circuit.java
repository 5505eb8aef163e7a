package dryfloor.model.element;

/**
 * Powered parts that lose power together.
 *
 * @param backup time for which it stays alive when the building loses power (s), 0 for none
 */
public record Circuit(String id, String name, double backup) implements Element {}
