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
 * Finds pumps that nothing ever stops and that move no water in normal operation: failures of a
 * drawing that does not circulate look safer than those of the building it was meant to be.
 */
final class IdlePumps {

  /** Less than this (m³/s), 6 mL in a minute, circulates nothing. */
  private static final double NOTHING = 1e-7;

  private IdlePumps() {}

  /** A note for each, in the order of the drawing. */
  static List<Note> of(Installation installation, Outcome normal) {
    List<Note> notes = new ArrayList<>();
    double end = normal.trajectory().time(normal.trajectory().moments() - 1);
    List<Flows.Flow> flows = normal.trajectory().flowsAt(end);
    for (Run run : installation.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.Pump pump && alwaysRuns(installation, pump)) {
          boolean sucksAir =
              normal.dryPumps().stream().anyMatch(dry -> dry.pump().equals(pump.id()));
          boolean still =
              flows.stream()
                  .noneMatch(flow -> flow.path().equals(run.id()) && flow.rate() > NOTHING);
          if (sucksAir || still) {
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
