package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeFixture;
import dryfloor.analysis.network.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Through which pipes water flows because something drives it, and through which only because some
 * was there.
 *
 * <p>A flow is driven while a pump that runs, or a supply, brings water to where it comes from,
 * directly or over other places, that would not have come there by itself: a pump that takes from a
 * display and gives back to it does not make the display run over.
 */
final class DrivenFlows {

  /** A flow that counts as running (m³/s). */
  static final double RUNS = 1e-6;

  private final FlowNetwork network;
  private final State state;

  /** Which way each account flows: 1, -1, or 0 where it does not. */
  private final byte[] directions;

  /** Which pipes drive water. */
  private final boolean[] drivers;

  /** What parts did when the drivers were looked for. */
  private int revision = -1;

  /** Which pipes carry water that is driven. */
  private final boolean[] driven;

  /** By place: the accounts over which water arrives there. */
  private final List<List<Integer>> arriving = new ArrayList<>();

  /** Which accounts carry what a driver moves. */
  private final boolean[] byDriver;

  /** By place: the drivers that bring water there. */
  private final List<List<Pipe>> bringing = new ArrayList<>();

  DrivenFlows(FlowNetwork network, State state) {
    this.network = network;
    this.state = state;
    directions = new byte[network.accounts().size()];
    drivers = new boolean[network.pipes().size()];
    driven = new boolean[drivers.length];
    byDriver = new boolean[network.accounts().size()];
    for (int place = 0; place < network.places().size(); place++) {
      arriving.add(new ArrayList<>());
      bringing.add(new ArrayList<>());
    }
  }

  /** Looks at the water that moved in a step of so many seconds (m³ over each account). */
  void look(double h, double[] moved) {
    if (turn(h, moved) || revision != state.board.revision()) {
      revision = state.board.revision();
      for (int i = 0; i < driven.length; i++) {
        drivers[i] = isDriver(network.pipes().get(i)) && moves(network.pipes().get(i));
      }
      layOut();
      for (int i = 0; i < driven.length; i++) {
        driven[i] = drivers[i] || (moves(network.pipes().get(i)) && isFed(i));
      }
    }
  }

  /** Sets which way each account flows; returns whether any does otherwise than before. */
  private boolean turn(double h, double[] moved) {
    boolean turned = false;
    for (int a = 0; a < moved.length; a++) {
      byte now = (byte) (Math.abs(moved[a]) > RUNS * h ? Math.signum(moved[a]) : 0);
      turned |= now != directions[a];
      directions[a] = now;
    }
    return turned;
  }

  /** Whether what flows through a pipe is driven. */
  boolean isDriven(int pipe) {
    return driven[pipe];
  }

  private boolean moves(Pipe pipe) {
    return accounts(pipe).anyMatch(a -> directions[a] != 0);
  }

  private static IntStream accounts(Pipe pipe) {
    return IntStream.of(
        pipe.throughSlot(),
        pipe.ownColumnSlot(0),
        pipe.ownColumnSlot(1),
        pipe.farColumnSlot(0),
        pipe.farColumnSlot(1));
  }

  private boolean isDriver(Pipe pipe) {
    if (network.places().get(pipe.leg(0).end().place()).kind() == Place.Kind.SUPPLY) {
      return true;
    }
    for (PipeFixture fixture : pipe.fixtures()) {
      if (fixture instanceof PipeFixture.PumpFixture pump && state.board.runs(pump.part())) {
        return true;
      }
    }
    return false;
  }

  /** Lays out by place what arrives and by what, as the directions and the drivers are. */
  private void layOut() {
    arriving.forEach(List::clear);
    bringing.forEach(List::clear);
    Arrays.fill(byDriver, false);
    for (int a = 0; a < directions.length; a++) {
      if (directions[a] != 0) {
        Account account = network.accounts().get(a);
        arriving.get(directions[a] > 0 ? account.to() : account.from()).add(a);
      }
    }
    for (int i = 0; i < drivers.length; i++) {
      if (drivers[i]) {
        Pipe driver = network.pipes().get(i);
        accounts(driver).forEach(a -> byDriver[a] = true);
        bringing.get(driver.leg(1).end().place()).add(driver);
      }
    }
  }

  /** Whether a driver brings water to the first end of a pipe that would not come by itself. */
  private boolean isFed(int pipe) {
    int first = network.pipes().get(pipe).leg(0).end().place();
    Set<Integer> comesByItself = comesTo(first, false);
    return comesTo(first, true).stream()
        .flatMap(place -> bringing.get(place).stream())
        .anyMatch(driver -> !comesByItself.contains(driver.leg(0).end().place()));
  }

  /** From which places water comes to one, with or without what drivers move. */
  private Set<Integer> comesTo(int place, boolean withDrivers) {
    Set<Integer> comes = new HashSet<>(List.of(place));
    Deque<Integer> open = new ArrayDeque<>(comes);
    while (!open.isEmpty()) {
      for (int a : arriving.get(open.removeFirst())) {
        if (withDrivers || !byDriver[a]) {
          Account account = network.accounts().get(a);
          int from = directions[a] > 0 ? account.from() : account.to();
          if (comes.add(from)) {
            open.addLast(from);
          }
        }
      }
    }
    return comes;
  }
}
