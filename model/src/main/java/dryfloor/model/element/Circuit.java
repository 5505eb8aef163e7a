package dryfloor.model.element;

import java.util.Optional;

/**
 * Powered parts that lose power together.
 *
 * @param backup time for which it stays alive when the building loses power (s), 0 for none
 * @param breaker where in the building it is switched off, in words for somebody in a hurry
 */
public record Circuit(String id, String name, double backup, Optional<String> breaker)
    implements Element {

  /** Of which nobody has said where its breaker is. */
  public Circuit(String id, String name, double backup) {
    this(id, name, backup, Optional.empty());
  }
}
