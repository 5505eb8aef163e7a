package dryfloor.analysis.band;

import java.util.List;
import java.util.Optional;

/**
 * How bad and how good every failure can be.
 *
 * @param bands one for each failure, the worst first
 * @param weights what each uncertain value does to all of them, the most first
 * @param everyCorner whether every combination of ends was run, and not a search among them
 * @param points how many points were run, the drawn one among them
 * @param unsound points at which no failure could be judged
 * @param sampled points by chance, if asked for
 */
public record BandResult(
    List<Band> bands,
    List<Weight> weights,
    boolean everyCorner,
    int points,
    List<Unsound> unsound,
    Optional<Sampled> sampled) {

  public BandResult {
    bands = List.copyOf(bands);
    weights = List.copyOf(weights);
    unsound = List.copyOf(unsound);
  }

  /**
   * A point at which the installation can't be built, or does not even work when all is well.
   *
   * @param drawable whether it can be built
   */
  public record Unsound(Point point, boolean drawable, String reason) {}
}
