package dryfloor.app.view.edit;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.node.ObjectNode;

/** Ids that nobody has yet. */
final class Ids {

  private static final Pattern NUMBERED = Pattern.compile("(.*?)-([0-9]{1,4})");

  private Ids() {}

  /** The wished id if it is free, else with the next free number. */
  static String free(FileTree tree, String wished) {
    Set<String> taken = new HashSet<>();
    tree.branches().forEach(branch -> taken.add(branch.id()));
    if (!taken.contains(wished)) {
      return wished;
    }
    Matcher numbered = NUMBERED.matcher(wished);
    String stem = numbered.matches() ? numbered.group(1) : wished;
    int number = 2;
    while (taken.contains(stem + "-" + number)) {
      number++;
    }
    return stem + "-" + number;
  }

  /** Gives something an id of its own, and its name the same number. */
  static String giveFree(FileTree tree, ObjectNode element) {
    String old = element.path("id").asString("");
    String id = free(tree, old);
    element.put("id", id);
    Matcher numbered = NUMBERED.matcher(id);
    if (!id.equals(old) && element.has("name") && numbered.matches()) {
      String name = element.path("name").asString().replaceFirst(" [0-9]{1,4}$", "");
      element.put("name", name + " " + numbered.group(2));
    }
    return id;
  }
}
