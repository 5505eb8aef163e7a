package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The ledger as people think of it: one movement for each way between two places, although the
 * analysis keeps the pieces of a run and the water that stands in them apart; and water that is
 * pumped round and round told apart from water that changed place.
 */
public final class Movements {

  private Movements() {}

  /** The movements, in the order of the ledger. */
  public static List<Movement> of(Ledger ledger) {
    Map<String, List<Ledger.Entry>> byPath = new LinkedHashMap<>();
    for (Ledger.Entry entry : ledger.entries()) {
      byPath.computeIfAbsent(entry.path(), path -> new ArrayList<>()).add(entry);
    }
    List<Movement> movements = new ArrayList<>();
    byPath.forEach((path, entries) -> movements.addAll(new PathMovements(path, entries).all()));
    return RoundAndRound.toldApart(movements);
  }
}
