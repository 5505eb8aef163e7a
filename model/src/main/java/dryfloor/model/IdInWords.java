package dryfloor.model;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a thing is called whose drawing gives it an id but no name. */
public final class IdInWords {

  /** Written in capitals by the trade. */
  private static final Set<String> LETTERS = Set.of("uv", "ro", "di");

  private IdInWords() {}

  /** The words of an id: "lift pump A" for {@code lift-pump-a}. */
  public static String of(String id) {
    return Stream.of(id.split("-"))
        .map(IdInWords::word)
        .collect(Collectors.joining(" "))
        .replace("top off", "top-off");
  }

  private static String word(String word) {
    boolean letter = word.length() == 1 && Character.isLetter(word.charAt(0));
    return letter || LETTERS.contains(word) ? word.toUpperCase(Locale.ROOT) : word;
  }
}
