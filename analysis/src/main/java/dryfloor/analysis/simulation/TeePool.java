package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * The pool at a tee that has drained, when the tee is full again.
 *
 * <p>A full tee has no water of its own: all of it is counted in the pipes that meet there. So what
 * stood in its pool runs into those of them that still hold air, as far as they stand lower, and
 * where they have no room goes on to where the full ones lead; else a tee would keep a pool more
 * after each time that it had drained.
 */
final class TeePool {

  /** No pool (m³). */
  private static final double NONE = 1e-6;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Recorder recorder;
  private final Salt salt;

  TeePool(FlowNetwork network, State state, FlowField field, Recorder recorder, Salt salt) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.recorder = recorder;
    this.salt = salt;
  }

  /**
   * A way for water out of the pool.
   *
   * @param slots accounts along it
   * @param share room that there is (m³), or what flows away by it (m³/s)
   */
  private record Way(List<Integer> slots, double share) {}

  /** Lets the pool run into the pipes at its tee, each its share of the room that there is. */
  void runIntoPipes(int tee) {
    List<Way> rooms = rooms(tee);
    handOver(tee, rooms, Math.min(water(tee), sum(rooms)));
  }

  /** Whether a full tee still has a pool, and water leaves it for somewhere. */
  boolean goesOn(int tee) {
    return field.volume(network.tees().get(tee).place()) > NONE && !leaving(tee).isEmpty();
  }

  /** Lets the pool go where the water goes, by each pipe its share of what flows away there. */
  void goOn(int tee) {
    handOver(tee, leaving(tee), water(tee));
  }

  private double water(int tee) {
    return state.volumes[network.tees().get(tee).place()];
  }

  private static double sum(List<Way> ways) {
    return ways.stream().mapToDouble(Way::share).sum();
  }

  private void handOver(int tee, List<Way> ways, double water) {
    double sum = sum(ways);
    if (water <= 0 || sum <= 0) {
      return;
    }
    double[] moved = new double[network.accounts().size()];
    for (Way way : ways) {
      int place = network.tees().get(tee).place();
      for (int slot : way.slots()) {
        moved[slot] += outOf(place, slot) * water * way.share() / sum;
        place = other(place, slot);
      }
    }
    salt.carry(state.volumes, moved);
    recorder.moveAtOnce(moved, state.volumes);
  }

  /** 1 where an account counts what leaves a place, -1 where it counts what comes. */
  private int outOf(int place, int slot) {
    return network.accounts().get(slot).from() == place ? 1 : -1;
  }

  private int other(int place, int slot) {
    Account account = network.accounts().get(slot);
    return account.from() == place ? account.to() : account.from();
  }

  /** Where there is room in the pipes at a tee. */
  private List<Way> rooms(int tee) {
    List<Way> rooms = new ArrayList<>();
    for (int i = 0; i < network.pipes().size(); i++) {
      for (int side = 0; side < 2; side++) {
        if (isAt(tee, i, side) && !state.pipes[i].full) {
          addRoom(i, side, tee, rooms);
        }
      }
    }
    return rooms;
  }

  private boolean isAt(int tee, int i, int side) {
    PipeEnd end = network.pipes().get(i).leg(side).end();
    return end.atJunction() && end.junction() == tee;
  }

  /** Its own leg takes it, or the far one where only the crest lies between. */
  private void addRoom(int i, int side, int tee, List<Way> rooms) {
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
      rooms.add(new Way(List.of(slot), room));
    }
  }

  /** The pipes by which water leaves for a vessel, full ones and those it falls in. */
  private List<Way> leaving(int tee) {
    List<Way> leaving = new ArrayList<>();
    for (int i = 0; i < network.pipes().size(); i++) {
      Pipe pipe = network.pipes().get(i);
      for (int side = 0; side < 2; side++) {
        int far = pipe.leg(1 - side).end().place();
        if (isAt(tee, i, side) && network.places().get(far).kind() == Place.Kind.VESSEL) {
          List<Integer> slots = slots(pipe, side, state.pipes[i].full);
          int last = slots.getLast();
          double away = -outOf(far, last) * field.flows[last];
          if (away > 0) {
            leaving.add(new Way(slots, away));
          }
        }
      }
    }
    return leaving;
  }

  private static List<Integer> slots(Pipe pipe, int side, boolean full) {
    boolean falls = !full && pipe.leg(side).negligible() && !pipe.leg(1 - side).negligible();
    return falls
        ? List.of(pipe.farColumnSlot(side), pipe.ownColumnSlot(1 - side))
        : List.of(pipe.throughSlot());
  }
}
