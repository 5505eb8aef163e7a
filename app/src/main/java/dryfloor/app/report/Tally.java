package dryfloor.app.report;

import dryfloor.analysis.sweep.FailureResult;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** How many failures end in which way. */
public record Tally(Map<Answer, Integer> counts) {

  public Tally {
    counts = Map.copyOf(counts);
  }

  /** Counts results. */
  public static Tally of(List<FailureResult> results) {
    Map<Answer, Integer> counts = new EnumMap<>(Answer.class);
    results.forEach(result -> counts.merge(Answer.of(result), 1, Integer::sum));
    return new Tally(counts);
  }

  /** How many came to this. */
  public int of(Answer answer) {
    return counts.getOrDefault(answer, 0);
  }

  /** "3 wet, 4 caught, 84 dry, no answer for 1, 2 skipped"; what is nowhere is left out. */
  public String words() {
    String words =
        of(Answer.WET) + " wet, " + of(Answer.CAUGHT) + " caught, " + of(Answer.DRY) + " dry";
    if (of(Answer.NO_ANSWER) > 0) {
      words += ", no answer for " + of(Answer.NO_ANSWER);
    }
    return of(Answer.SKIPPED) > 0 ? words + ", " + of(Answer.SKIPPED) + " skipped" : words;
  }

  /** How many there are in all. */
  public int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }
}
