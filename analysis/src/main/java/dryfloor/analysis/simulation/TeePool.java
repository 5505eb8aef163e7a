package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import java.util.ArrayList;
import java.util.List;

/**
 * The pool at a tee that has drained, when the tee is full again.
 *
 * <p>A full tee has no water of its own: all of it is counted in the pipes that meet there. So what
 * stood in its pool runs into those of them that still hold air, as far as they stand lower; else a
 * tee would keep a pool more after each time that it had drained.
 */
final class TeePool {

  private final FlowNetwork network;
  private final State state;
  private final Recorder recorder;
  private final Salt salt;

  TeePool(FlowNetwork network, State state, Recorder recorder, Salt salt) {
    this.network = network;
    this.state = state;
    this.recorder = recorder;
    this.salt = salt;
  }

  /**
   * A pipe that takes some.
   *
   * @param slot account over which it does
   * @param room that it has (m³)
   */
  private record Taker(int slot, double room) {}

  /** Lets the pool run into the pipes at its tee; each gets its share of the room there is. */
  void runOff(int tee) {
    int place = network.tees().get(tee).place();
    List<Taker> takers = takers(tee);
    double room = takers.stream().mapToDouble(Taker::room).sum();
    double water = Math.min(state.volumes[place], room);
    if (water <= 0) {
      return;
    }
    double[] moved = new double[network.accounts().size()];
    for (Taker taker : takers) {
      double sign = network.accounts().get(taker.slot()).from() == place ? 1 : -1;
      moved[taker.slot()] += sign * water * taker.room() / room;
    }
    salt.carry(state.volumes, moved);
    recorder.moveAtOnce(moved, state.volumes);
  }

  private List<Taker> takers(int tee) {
    List<Taker> takers = new ArrayList<>();
    for (int i = 0; i < network.pipes().size(); i++) {
      for (int side = 0; side < 2; side++) {
        PipeEnd end = network.pipes().get(i).leg(side).end();
        if (end.atJunction() && end.junction() == tee && !state.pipes[i].full) {
          addTaker(i, side, tee, takers);
        }
      }
    }
    return takers;
  }

  /** Its own leg takes it, or the far one where only the crest lies between. */
  private void addTaker(int i, int side, int tee, List<Taker> takers) {
    Pipe pipe = network.pipes().get(i);
    boolean over = pipe.leg(side).negligible();
    int leg = over ? 1 - side : side;
    if (pipe.leg(leg).negligible()) {
      return;
    }
    int slot = over ? pipe.farColumnSlot(side) : pipe.ownColumnSlot(side);
    double top = network.tees().get(tee).elevation() + network.tees().get(tee).bore();
    int column = pipe.leg(leg).column();
    double holds = network.places().get(column).table().volume(Math.min(top, pipe.crest()));
    double room = Math.min(holds, pipe.leg(leg).volume()) - state.volumes[column];
    if (room > 0 && (!over || top > pipe.crest())) {
      takers.add(new Taker(slot, room));
    }
  }
}
