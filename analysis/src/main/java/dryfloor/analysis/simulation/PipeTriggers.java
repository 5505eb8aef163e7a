package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.ArrayList;
import java.util.List;

/**
 * When pipes take air ({@link FullPipeTriggers}), what the water in their legs does then, and when
 * they fill again ({@link LegTriggers}).
 */
final class PipeTriggers {

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Columns columns;
  private final FullPipeTriggers whenFull;
  private final LegTriggers whenBroken;

  /** Every pipe as it is or would be full, in the present modes. */
  private final FullPipe[] fullPipes;

  /** The triggers of every pipe, and the revision of its branches they were made for. */
  private final List<List<Trigger>> made = new ArrayList<>();

  private final int[] madeFor;

  PipeTriggers(FlowNetwork network, State state, FlowField field, Story story) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.fullPipes = new FullPipe[network.pipes().size()];
    this.madeFor = new int[fullPipes.length];
    for (int i = 0; i < fullPipes.length; i++) {
      made.add(List.of());
    }
    columns = new Columns(network, state, field);
    whenFull = new FullPipeTriggers(network, state, field, columns, story);
    whenBroken = new LegTriggers(network, state, field, columns, fullPipes, story);
  }

  void addTo(List<Trigger> triggers) {
    for (int i = 0; i < madeFor.length; i++) {
      if (field.builder.revision(i) != madeFor[i]) {
        madeFor[i] = field.builder.revision(i);
        made.set(i, make(i));
      }
      triggers.addAll(made.get(i));
    }
  }

  private List<Trigger> make(int i) {
    List<Trigger> triggers = new ArrayList<>();
    PipeBranch through = field.pipes[i].through().orElseGet(() -> field.builder.through(i));
    fullPipes[i] = new FullPipe(network, state, field, i, through);
    if (state.pipes[i].full) {
      whenFull.addTo(i, fullPipes[i], triggers);
    } else {
      whenBroken.addTo(i, 0, triggers);
      whenBroken.addTo(i, 1, triggers);
    }
    return triggers;
  }

  /**
   * Lets every column at rest go the last bit to where it belongs, once all else stands still;
   * returns whether any had to.
   */
  boolean wakeColumns() {
    boolean any = false;
    for (int i = 0; i < network.pipes().size(); i++) {
      for (int side = 0; side < 2; side++) {
        if (!state.pipes[i].full && state.pipes[i].legs[side] == PipeMode.Leg.AT_REST) {
          if (columns.misplaced(i, side) > 2 * Columns.THERE
              && columns.wouldFlow(field.builder.moving(i, side))) {
            state.pipes[i].legs[side] = PipeMode.Leg.MOVING;
            any = true;
          }
        }
      }
    }
    return any;
  }
}
