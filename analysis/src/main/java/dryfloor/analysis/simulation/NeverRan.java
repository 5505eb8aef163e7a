package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.outcome.Note;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Runs that came apart, leak or lie beside their vessel and show nothing of it, because the level
 * that would call for them never falls: evaporation is left out. A dry answer then says nothing of
 * where their water goes.
 */
final class NeverRan {

  /** Less water than this is none to speak of: a bore wetted (m³). */
  private static final double WETS = 1e-4;

  private final FlowNetwork network;
  private final Recorder recorder;
  private final Set<String> carriedBefore;

  /**
   * What never ran in a simulation that is over.
   *
   * @param carriedBefore runs that carried water when all was well
   */
  NeverRan(FlowNetwork network, Recorder recorder, Set<String> carriedBefore) {
    this.network = network;
    this.recorder = recorder;
    this.carriedBefore = carriedBefore;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    for (Effect effect : network.effects()) {
      if (effect instanceof Effect.RunParted parted) {
        add(parted.run(), parted.landing(), notes);
      } else if (effect instanceof Effect.RunLeaks leaks) {
        add(leaks.run(), leaks.landing(), notes);
      } else if (effect instanceof Effect.EndMoved moved && moved.end() == Failure.End.SECOND) {
        add(moved.run(), moved.landing(), notes);
      }
    }
    return notes;
  }

  private void add(String id, String landing, List<Note> notes) {
    for (Run run : network.installation().runs()) {
      boolean elsewhere = !run.to().at().equals(landing);
      if (run.id().equals(id) && elsewhere && isCalledByALevel(run) && !carried(id)) {
        notes.add(new Note.NeverRan(id, landing));
      }
    }
  }

  /** Whether water enters the run only when some level has fallen. */
  private boolean isCalledByALevel(Run run) {
    return run.parts().stream()
        .anyMatch(part -> part instanceof Part.FloatValve || isCalledByALevel(part));
  }

  private boolean isCalledByALevel(Part part) {
    return network.installation().controls().stream()
        .anyMatch(
            control ->
                control instanceof Control.LevelSwitch level
                    && level.action() == Control.LevelSwitch.Action.FILLS
                    && level.drives().contains(part.id()));
  }

  private boolean carried(String run) {
    double entered = 0;
    for (Pipe pipe : network.pipes()) {
      if (pipe.run().equals(run)) {
        double[] forward = recorder.carried[0];
        entered += forward[pipe.throughSlot()];
        entered += forward[pipe.ownColumnSlot(0)] + forward[pipe.farColumnSlot(0)];
      }
    }
    return entered > WETS || carriedBefore.contains(run);
  }
}
