package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What goes round and round in a field of flows, or in the water of some time: the part of it that
 * leaves every place as full as it was. The rest is what levels still creep by, and is left out.
 *
 * <p>Round after round is taken out of the flows, each with the least flow on it, until there is
 * none left. Water that comes from outside and leaves again counts as going round.
 */
final class Circulation {

  /** A flow smaller than this goes nowhere (m³/s), nor does so little water (m³). */
  private static final double NOTHING = 1e-12;

  private static final int OUTSIDE = -1;

  private final FlowNetwork network;
  private final Predicate<Place.Kind> stays;
  private final double[] left;
  private final double[] round;

  /** Accounts with a flow. */
  private final int[] flowing;

  /** Of these, by index of the node: those that lead away from it. */
  private final List<List<Integer>> leaving = new ArrayList<>();

  private Circulation(FlowNetwork network, Predicate<Place.Kind> stays, double[] flows) {
    this.network = network;
    this.stays = stays;
    left = flows.clone();
    round = new double[flows.length];
    flowing = IntStream.range(0, left.length).filter(a -> Math.abs(left[a]) > NOTHING).toArray();
    for (int node = 0; node <= network.places().size(); node++) {
      leaving.add(new ArrayList<>());
    }
    for (int a : flowing) {
      leaving.get(index(source(a))).add(a);
    }
  }

  /** The part of these flows (m³/s) that goes round, by account. */
  static double[] of(FlowNetwork network, double[] flows) {
    return new Circulation(network, Place.Kind::isPool, flows).takeRounds();
  }

  /**
   * The part of this water (m³), by account, that leaves every run and junction as full as it was:
   * what comes out of one has come in.
   */
  static double[] throughRuns(FlowNetwork network, double[] water) {
    return new Circulation(network, Circulation::isInRuns, water).takeRounds();
  }

  private static boolean isInRuns(Place.Kind kind) {
    return switch (kind) {
      case COLUMN, TEE -> true;
      case VESSEL, BASIN, FLOOR, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
    };
  }

  private double[] takeRounds() {
    for (int a : flowing) {
      boolean more = true;
      while (more) {
        more = takeRoundOver(a);
      }
    }
    return round;
  }

  /** Takes out a round that leads over an account; returns whether there was one. */
  private boolean takeRoundOver(int a) {
    if (Math.abs(left[a]) <= NOTHING) {
      return false;
    }
    int[] cameBy = wayBack(target(a), source(a));
    if (cameBy.length == 0) {
      return false;
    }
    List<Integer> over = new ArrayList<>(List.of(a));
    for (int at = source(a); at != target(a); at = source(over.getLast())) {
      over.add(cameBy[index(at)]);
    }
    double least = over.stream().mapToDouble(on -> Math.abs(left[on])).min().orElseThrow();
    over.forEach(on -> take(on, least));
    return true;
  }

  private void take(int a, double amount) {
    double signed = Math.copySign(amount, left[a]);
    left[a] -= signed;
    round[a] += signed;
  }

  /** By which account each place is reached from one, up to another; empty if it is not reached. */
  private int[] wayBack(int from, int to) {
    int[] cameBy = new int[network.places().size() + 1];
    Arrays.fill(cameBy, -1);
    Deque<Integer> open = new ArrayDeque<>();
    open.add(from);
    while (!open.isEmpty()) {
      int at = open.removeFirst();
      if (at == to) {
        return cameBy;
      }
      for (int a : leaving.get(index(at))) {
        if (Math.abs(left[a]) > NOTHING) {
          int next = target(a);
          if (next != from && cameBy[index(next)] < 0) {
            cameBy[index(next)] = a;
            open.addLast(next);
          }
        }
      }
    }
    return new int[0];
  }

  private int source(int a) {
    Account account = network.accounts().get(a);
    return node(left[a] > 0 ? account.from() : account.to());
  }

  private int target(int a) {
    Account account = network.accounts().get(a);
    return node(left[a] > 0 ? account.to() : account.from());
  }

  private int node(int place) {
    return stays.test(network.places().get(place).kind()) ? place : OUTSIDE;
  }

  private static int index(int node) {
    return node + 1;
  }
}
