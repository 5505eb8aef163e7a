package dryfloor.model.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Collects what is wrong while a file is read; at most one problem of a kind for each place. */
final class Problems {

  /** A reader needs the first few; a file of nothing but mistakes must not fill the screen. */
  static final int MOST_REPORTED = 500;

  /** Longer texts quote something absurd from the file. */
  private static final int LONGEST_TEXT = 600;

  private final List<Problem> found = new ArrayList<>();
  private final NavigableSet<String> paths = new TreeSet<>();
  private int unreported;

  void add(FilePlace place, String message, String remedy) {
    add(place, message, () -> remedy);
  }

  /** Adds a problem whose remedy takes effort to find, which is spared if it goes unreported. */
  void add(FilePlace place, String message, Supplier<String> remedy) {
    paths.add(place.path());
    if (found.size() >= MOST_REPORTED) {
      unreported++;
      return;
    }
    found.add(
        new Problem(
            place.line(),
            place.column(),
            shortened(place.path()),
            shortened(message),
            shortened(remedy.get())));
  }

  private static String shortened(String quoted) {
    String text = VisibleText.of(quoted);
    return text.length() <= LONGEST_TEXT
        ? text
        : VisibleText.first(text, LONGEST_TEXT / 2) + " ... " + VisibleText.last(text, 100);
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** Whether something has been reported at exactly this place. */
  boolean concern(FilePlace place) {
    return paths.contains(place.path());
  }

  /** Whether something has been reported at one of the fields of the object at this place. */
  boolean concernFieldOf(FilePlace place) {
    String firstField = place.path() + ".";
    String next = paths.ceiling(firstField);
    return next != null && next.startsWith(firstField);
  }

  /** All problems in the order of the file. */
  List<Problem> inOrder() {
    List<Problem> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    if (unreported > 0) {
      sorted.add(new Problem(1, 1, "", unreported + " further problems", "mend those above first"));
    }
    return List.copyOf(sorted);
  }
}
