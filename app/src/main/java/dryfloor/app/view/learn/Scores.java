package dryfloor.app.view.learn;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The scores of all sets of exercises that somebody has tried.
 *
 * @param sets by the name of the set, the one that was tried last at the end
 */
public record Scores(Map<String, Score> sets) {

  /** Nothing tried yet. */
  public static final Scores NONE = new Scores(Map.of());

  public Scores {
    sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
  }

  /** Of a set; none where it was not tried. */
  public Optional<Score> of(String set) {
    return Optional.ofNullable(sets.get(set));
  }

  /** After a round, finished or not. */
  public Scores with(String set, Round round) {
    Map<String, Score> more = new LinkedHashMap<>(sets);
    Score score = of(set).map(known -> known.with(round)).orElseGet(() -> Score.first(round));
    more.remove(set);
    more.put(set, score);
    return new Scores(more);
  }

  /** With this set forgotten. */
  public Scores without(String set) {
    Map<String, Score> fewer = new LinkedHashMap<>(sets);
    fewer.remove(set);
    return new Scores(fewer);
  }
}
