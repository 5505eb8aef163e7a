package dryfloor.model.file;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** How constants are spelled in the file, and what a misspelled word was meant to be. */
final class Words {

  private Words() {}

  /** {@code HOSE_CLAMP} is hoseClamp. */
  static String of(Enum<?> constant) {
    StringBuilder word = new StringBuilder();
    for (String piece : constant.name().split("_", -1)) {
      String lower = piece.toLowerCase(Locale.ROOT);
      word.append(
          word.isEmpty()
              ? lower
              : lower.substring(0, 1).toUpperCase(Locale.ROOT) + lower.substring(1));
    }
    return word.toString();
  }

  /** The nearest of the known words, if it is near enough to be what was meant. */
  static Optional<String> nearest(String word, Collection<String> known) {
    String best = "";
    int least = Math.max(2, word.length() / 3) + 1;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - word.length()) >= least) {
        continue;
      }
      int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
      if (distance < least && distance < candidate.length()) {
        least = distance;
        best = candidate;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /** "did you mean 'bore'?" where a word is near, otherwise what is there to choose from. */
  static String suggestion(String word, Collection<String> known) {
    return nearest(word, known)
        .map(near -> "did you mean '" + near + "'?")
        .orElseGet(() -> choice(known));
  }

  private static String choice(Collection<String> known) {
    if (known.isEmpty()) {
      return "none is drawn";
    }
    String some = String.join(", ", known.stream().limit(20).toList());
    return "it can be " + some + (known.size() > 20 ? ", ..." : "");
  }

  /** Levenshtein distance: letters inserted, left out or exchanged (Levenshtein 1966). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(exchanged, Math.min(row[j - 1], diagonal) + 1);
      }
    }
    return row[b.length()];
  }
}
