package dryfloor.app.report;

import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.stream.Stream;

/** Where the water of normal operation stands elsewhere than the drawing shows. */
final class SettledLevels {

  /** A level that settles further than this (m) from where it is drawn is worth telling. */
  private static final double WORTH_TELLING = 2e-3;

  private SettledLevels() {}

  /** In normal operation, whose outcome says so itself. */
  static List<Note.SettlesElsewhere> ofNormal(Outcome normal) {
    return normal.notes().stream()
        .filter(Note.SettlesElsewhere.class::isInstance)
        .map(Note.SettlesElsewhere.class::cast)
        .toList();
  }

  /** At the beginning of a failure. */
  static List<Note.SettlesElsewhere> before(Wording wording, Outcome outcome) {
    return outcome.vessels().stream().flatMap(vessel -> elsewhere(wording, vessel)).toList();
  }

  private static Stream<Note.SettlesElsewhere> elsewhere(
      Wording wording, Outcome.VesselOutcome vessel) {
    return wording.installation().vessels().stream()
        .filter(drawn -> drawn.id().equals(vessel.id()))
        .mapToDouble(Vessel::level)
        .filter(declared -> Math.abs(vessel.levelBefore() - declared) > WORTH_TELLING)
        .mapToObj(
            declared -> new Note.SettlesElsewhere(vessel.id(), declared, vessel.levelBefore()));
  }

  /** A sentence for each, and what follows from it; nothing where all is as drawn. */
  static void write(Wording wording, List<Note.SettlesElsewhere> elsewhere, Lines lines) {
    if (elsewhere.isEmpty()) {
      return;
    }
    NoteSentence sentence = new NoteSentence(wording);
    for (Note note : elsewhere) {
      lines.paragraph("", sentence.of(note));
    }
    lines.paragraph("", "Every failure starts from the levels that settle, not from those drawn.");
  }
}
