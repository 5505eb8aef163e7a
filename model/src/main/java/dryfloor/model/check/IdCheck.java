package dryfloor.model.check;

import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Checks that ids are well formed and unique, and hands every reference to its check. */
final class IdCheck {

  private static final Pattern WELL_FORMED = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,63}");

  static final String WELL_FORMED_IN_WORDS =
      "letters, digits, dashes and dots, at most 64, beginning with a letter or digit";

  private final Drawing drawing;
  private final Findings findings;

  IdCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    Installation installation = drawing.installation();
    List<String> ids = new ArrayList<>();
    Stream<String> elements = installation.elements().map(Element::id);
    Stream<String> parts =
        installation.runs().stream().map(Run::parts).flatMap(List::stream).map(part -> part.id());
    Stream.concat(elements, parts).forEach(ids::add);
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      checkForm(id);
      if (!seen.add(id)) {
        findings.error(id, "id", "the id '" + id + "' is taken", "give one of the two another id");
      }
    }
    checkNames(installation);
    new ReferenceCheck(drawing, findings).run();
  }

  /** Two things of one name can't be told apart in any answer. */
  private void checkNames(Installation installation) {
    Map<String, String> first = new HashMap<>();
    Stream.concat(
            installation.elements().map(element -> Map.entry(element.id(), element.name())),
            installation.runs().stream()
                .flatMap(run -> run.parts().stream())
                .map(part -> Map.entry(part.id(), part.name())))
        .forEach(
            named -> {
              String taken = first.putIfAbsent(named.getValue(), named.getKey());
              if (taken != null && !taken.equals(named.getKey())) {
                findings.warning(
                    named.getKey(),
                    "name",
                    "'" + taken + "' is called the same, '" + named.getValue() + "'",
                    "a name of its own, so that answers can tell them apart");
              }
            });
  }

  static boolean isWellFormed(String id) {
    return WELL_FORMED.matcher(id).matches();
  }

  private void checkForm(String id) {
    if (!isWellFormed(id)) {
      findings.error(id, "id", "'" + id + "' is no id", WELL_FORMED_IN_WORDS);
    } else if (id.equals("datum") || id.endsWith(".rim")) {
      findings.error(
          id,
          "id",
          "the id '" + id + "' would be taken for a height",
          "'datum' and the ending '.rim' mean heights; choose another id");
    }
  }
}
