package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.model.Installation;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** What people call the things of a drawing, by id. */
public final class Names {

  /** Words for what is a floor without being called one. */
  private static final List<String> FLOORS =
      List.of("floor", "deck", "boards", "bottom", "slab", "ground", "terrace", "yard");

  /** "raceway 4", "lift b": the last word is a number or a letter. */
  private static final Pattern NUMBERED = Pattern.compile(".+ ([0-9]+|[A-Za-z])");

  private final Map<String, String> byId = new HashMap<>();

  private Names(Installation installation) {
    byId.put(Ledger.BEYOND, "beyond the drawing");
    byId.put(Ledger.OUTSIDE, "outside");
    installation.elements().forEach(element -> byId.put(element.id(), element.name()));
    installation.runs().stream()
        .flatMap(run -> run.parts().stream())
        .forEach(part -> byId.put(part.id(), part.name()));
    installation.floors().forEach(floor -> byId.put(floor.id(), floorName(floor.name())));
  }

  /** Water reaches the hall floor, not the hall; but a deck or the bottom of a pit as it is. */
  private static String floorName(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return FLOORS.stream().anyMatch(small::contains) ? name : name + " floor";
  }

  /** The names in an installation. */
  public static Names of(Installation installation) {
    return new Names(installation);
  }

  /** As a heading or label: "Cellar floor". */
  public String label(String id) {
    return Sentences.capital(of(id));
  }

  /** Whether nothing else is called the same. */
  public boolean isTheOnly(String id) {
    return byId.values().stream().filter(of(id)::equals).count() <= 1;
  }

  /** The name as it was given; an id that is nobody's is its own name. */
  public String of(String id) {
    String name = byId.getOrDefault(id, id);
    return name.isBlank() ? id : name;
  }

  /** With its article, inside a sentence: "the cellar floor"; numbered ones have none. */
  public String the(String id) {
    if (id.equals(Ledger.BEYOND) || id.equals(Ledger.OUTSIDE)) {
      return of(id);
    }
    String name = of(id);
    if (NUMBERED.matcher(name).matches()) {
      return inSentence(name);
    }
    String bare = name.regionMatches(true, 0, "the ", 0, 4) ? name.substring(4) : name;
    return "the " + inSentence(bare);
  }

  /** With its article, at the head of a sentence: "The cellar floor". */
  public String theAtStart(String id) {
    return Sentences.capital(the(id));
  }

  private static String inSentence(String name) {
    boolean ordinaryWord =
        name.length() > 1
            && Character.isUpperCase(name.charAt(0))
            && Character.isLowerCase(name.charAt(1));
    return ordinaryWord ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
  }

  /** The name in small letters, for a cell of a table: "cellar floor". */
  String small(String id) {
    return inSentence(of(id));
  }
}
