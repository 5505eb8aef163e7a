package dryfloor.model.graph;

/** Where water can be: a vertex of the {@link WaterGraph}. */
public sealed interface Place {

  /** Everything outside the drawing that water can reach; counted as wet. */
  Place BEYOND = new Beyond();

  /** A place that the drawing names by its id. */
  record Drawn(String id, Kind kind) implements Place {}

  /** Beyond the drawing. */
  record Beyond() implements Place {}

  /** What a drawn place is. */
  enum Kind {
    VESSEL,
    FLOOR,
    JUNCTION,
    SUPPLY,
    DRAIN
  }
}
