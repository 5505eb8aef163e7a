package dryfloor.model.file;

import java.util.HashMap;
import java.util.Map;

/** Reports fields that an object does not have and fields that are given twice. */
final class FieldNames {

  private FieldNames() {}

  static void check(Located.Structure node, Form form, Problems problems) {
    Map<String, FilePlace> seen = new HashMap<>();
    for (Located.Member member : node.members()) {
      FilePlace first = seen.putIfAbsent(member.name(), member.place());
      if (first != null) {
        problems.add(
            member.place(),
            "the field '" + member.name() + "' is given twice",
            "keep one of them; the first is on line " + first.line());
      } else if (!form.fields().contains(member.name())) {
        problems.add(
            member.place(),
            "unknown field '" + member.name() + "' (" + form.word() + ")",
            () -> Words.suggestion(member.name(), form.fields()));
      }
    }
  }
}
