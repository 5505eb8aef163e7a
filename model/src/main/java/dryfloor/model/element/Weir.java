package dryfloor.model.element;

/**
 * An edge over which water passes between two vessels, in either direction: overflow teeth, baffle,
 * wall between two tanks.
 *
 * @param from id of the vessel that is upstream in normal operation
 * @param to id of the vessel that is downstream in normal operation
 * @param crest elevation of the edge (m)
 * @param length net open length (m); of teeth only the gaps count
 */
public record Weir(
    String id, String name, Kind kind, String from, String to, double crest, double length)
    implements Element {

  /** The same weir with its edge at another elevation (m). */
  public Weir withCrest(double other) {
    return new Weir(id, name, kind, from, to, other, length);
  }

  /** How the edge looks, which decides whether it can clog. */
  public enum Kind {
    TEETH,
    BAFFLE,
    LIP
  }
}
