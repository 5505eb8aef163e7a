package dryfloor.model.file;

import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Element;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Checks the drawing that was read and tells where in the file each finding stands. */
final class FindingPlaces {

  private static final Pattern STEP = Pattern.compile("([A-Za-z]+)|\\[(\\d+)]");

  private final Located.Structure root;
  private final DrawnIds ids;

  FindingPlaces(Located.Structure root, DrawnIds ids) {
    this.root = root;
    this.ids = ids;
  }

  /** Adds every error and warning about a place of which nothing wrong is known yet. */
  void check(Installation installation, Problems problems, Problems warnings) {
    List<Finding> news =
        DrawingCheck.check(installation, unread(installation)).stream()
            .filter(finding -> !isKnown(finding, placeOf(finding), problems))
            .toList();
    add(news, problems, warnings);
  }

  /** Adds findings with the places in the file where they stand. */
  void add(List<Finding> findings, Problems problems, Problems warnings) {
    for (Finding finding : findings) {
      Problems kind =
          switch (finding.severity()) {
            case ERROR -> problems;
            case WARNING -> warnings;
          };
      kind.add(placeOf(finding), finding.message(), finding.remedy());
    }
  }

  /** The reader itself reports dangling ids, those of run ends one level deeper. */
  private static boolean isKnown(Finding finding, FilePlace place, Problems problems) {
    boolean runEnd = finding.field().equals("from") || finding.field().equals("to");
    return problems.concern(place) || (runEnd && problems.concernFieldOf(place));
  }

  private Set<String> unread(Installation installation) {
    Set<String> unread = new HashSet<>(ids.all());
    installation.elements().map(Element::id).forEach(unread::remove);
    installation.runs().stream()
        .flatMap(run -> run.parts().stream())
        .forEach(part -> unread.remove(part.id()));
    return unread;
  }

  private FilePlace placeOf(Finding finding) {
    Located.Structure element = ids.find(finding.element()).map(DrawnIds.Drawn::node).orElse(root);
    Located deepest = element;
    Matcher steps = STEP.matcher(finding.field());
    while (steps.find()) {
      Optional<Located> next = step(deepest, steps);
      if (next.isEmpty()) {
        break;
      }
      deepest = next.get();
    }
    if (deepest.place().equals(element.place()) && !finding.field().isEmpty()) {
      FilePlace place = element.place();
      return new FilePlace(place.line(), place.column(), place.pathOf(finding.field()));
    }
    return deepest.place();
  }

  private static Optional<Located> step(Located from, Matcher step) {
    if (from instanceof Located.Structure structure && step.group(1) != null) {
      return structure.find(step.group(1));
    }
    if (from instanceof Located.Sequence sequence && step.group(2) != null) {
      List<Located> items = sequence.items();
      int index = Integer.parseInt(step.group(2));
      return index < items.size() ? Optional.of(items.get(index)) : Optional.empty();
    }
    return Optional.empty();
  }
}
