package dryfloor.analysis.failure;

import dryfloor.model.Installation;
import dryfloor.model.element.Control.LevelSwitch;
import dryfloor.model.element.Element;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Names of the drawing's components, as a sentence needs them. */
final class ComponentNames {

  /** What has a number or letter is called by it, without an article: "raceway 2". */
  private static final Pattern NUMBERED = Pattern.compile(".+ ([0-9]+|[A-Za-z])");

  private final Drawing drawing;
  private final Map<String, String> names = new HashMap<>();

  ComponentNames(Installation installation) {
    this.drawing = new Drawing(installation);
    installation.elements().forEach((Element element) -> names.put(element.id(), element.name()));
    installation.runs().stream()
        .flatMap(run -> run.parts().stream())
        .forEach(part -> names.put(part.id(), part.name()));
  }

  /** A name that opens a sentence, such as "Chiller union". */
  String atStart(String id) {
    String name = name(id);
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** A name inside a sentence, such as "the chiller union", "the UV lamp" or "raceway 2". */
  String inside(String id) {
    String name = name(id);
    String first = name.split(" ", 2)[0];
    boolean ordinaryWord =
        first.length() > 1
            && first.substring(1).equals(first.substring(1).toLowerCase(Locale.ROOT));
    String lowered =
        ordinaryWord ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    boolean hasArticle = lowered.startsWith("the ") || NUMBERED.matcher(name).matches();
    return hasArticle ? lowered : "the " + lowered;
  }

  String vesselAtEnd(String run, Failure.End end) {
    return new RunEffects(drawing).opening(run, end).at();
  }

  LevelSwitch.Action action(String levelSwitch) {
    return drawing.element(LevelSwitch.class, levelSwitch).action();
  }

  /** What the user calls a sequence, to open a sentence. */
  String sequence(String id) {
    String name = drawing.sequence(id).name();
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private String name(String id) {
    String name = names.get(id);
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException(
          "the drawing has nothing with the id \"" + id + "\" that has a name");
    }
    return name;
  }
}
