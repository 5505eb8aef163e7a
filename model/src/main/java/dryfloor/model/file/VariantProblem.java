package dryfloor.model.file;

import java.util.List;
import java.util.Optional;

/** Says why an object is none of the forms that may stand at its place. */
final class VariantProblem {

  private VariantProblem() {}

  static void report(Located item, Problems problems) {
    String path = item.place().path();
    if (!(item instanceof Located.Structure structure)) {
      problems.add(item.place(), item.description() + " is no object", "an object { ... }");
    } else if (path.endsWith(".from") || path.endsWith(".to")) {
      problems.add(
          item.place(),
          "this run end is nowhere, or in two places",
          "a run end names one vessel, floor, junction, supply or drain, such as"
              + " {\"vessel\": \"sump\", \"at\": \"40 mm\", \"opening\": \"port\"}");
    } else if (path.startsWith("failures.sequences")) {
      problems.add(
          item.place(),
          "this event is nothing, or several things at once",
          "an event is one of {\"at\": \"0 s\", \"begins\": \"power-lost.building\"},"
              + " {\"at\": \"2 h\", \"ends\": \"power-lost.building\"},"
              + " {\"at\": \"1 d\", \"pours\": \"10 L\", \"into\": \"sump\"} or"
              + " {\"at\": \"2 d\", \"takes\": \"60 L\", \"from\": \"sump\"}");
    } else if (path.startsWith("controls")) {
      unknownWord(structure, "control", ControlReader.FORMS, problems);
    } else {
      unknownWord(structure, "part", PartReader.FORMS, problems);
    }
  }

  private static void unknownWord(
      Located.Structure structure, String field, List<Form> forms, Problems problems) {
    List<String> words = forms.stream().map(Form::word).toList();
    Optional<String> word = DrawnIds.textOf(structure, field);
    FilePlace place = structure.find(field).map(Located::place).orElse(structure.place());
    if (word.isPresent()) {
      problems.add(
          place, "'" + word.get() + "' is no " + field, Words.suggestion(word.get(), words));
    } else {
      problems.add(
          place,
          "it does not say which " + field + " it is",
          "add \"" + field + "\": one of " + String.join(", ", words));
    }
  }
}
