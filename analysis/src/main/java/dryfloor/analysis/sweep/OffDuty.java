package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what does not do in normal operation what it is drawn for. Pumps that nothing ever stops
 * and that move no water: failures of a drawing that does not circulate look safer than those of
 * the building it was meant to be. Emergency drains that carry water all along: what they should
 * save is then half lost.
 */
final class OffDuty {

  /** Less than this (m³/s), 6 mL in a minute, circulates nothing. */
  private static final double NOTHING = 1e-7;

  private OffDuty() {}

  /** A note for each, in the order of the drawing. */
  static List<Note> of(Installation installation, Outcome normal) {
    List<Note> notes = new ArrayList<>();
    double end = normal.trajectory().time(normal.trajectory().moments() - 1);
    List<Flows.Flow> flows = normal.trajectory().flowsAt(end);
    for (Run run : installation.runs()) {
      double carried =
          flows.stream()
              .filter(flow -> flow.path().equals(run.id()))
              .mapToDouble(Flows.Flow::rate)
              .max()
              .orElse(0);
      if (run.duty() == Run.Duty.EMERGENCY && carried > NOTHING) {
        notes.add(new Note.EmergencyDrainRuns(run.id(), carried));
      }
      for (Part part : run.parts()) {
        if (part instanceof Part.Pump pump && alwaysRuns(installation, pump)) {
          boolean sucksAir =
              normal.dryPumps().stream().anyMatch(dry -> dry.pump().equals(pump.id()));
          if (sucksAir || carried <= NOTHING) {
            notes.add(new Note.IdlePump(pump.id(), sucksAir));
          }
        }
      }
    }
    return notes;
  }

  private static boolean alwaysRuns(Installation installation, Part.Pump pump) {
    return installation.controls().stream()
        .noneMatch(control -> control.drives().contains(pump.id()));
  }
}
