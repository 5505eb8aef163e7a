package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

/** Keeps the books: water over each account, levels over time, highest levels, first times. */
final class Recorder {

  /** Water that counts as having arrived (m³). */
  static final double COUNTS = 1e-6;

  /** A flow that counts as running (m³/s). */
  private static final double RAN = 1e-6;

  /** Less water than this is not worth telling (m³). */
  private static final double WORTH_TELLING = 5e-4;

  private final FlowNetwork network;
  private final Story story;

  /** Water over each account since the beginning, forwards and backwards (m³). */
  final double[][] carried;

  /** Highest level of each place (m), and when. */
  final double[] highest;

  final double[] highestTime;

  /** When each account first carried water that counts, or NaN. */
  final double[] firstTime;

  /** Water that each place got in all. */
  final double[] received;

  /** Which ways have been told of. */
  private final Set<String> told = new HashSet<>();

  private double[] flowsAtStart = new double[0];

  /** Places whose levels a person sees: vessels, basins and floors. */
  private final int[] inSight;

  private final LevelHistory history;

  Recorder(FlowNetwork network, Story story) {
    this.network = network;
    this.story = story;
    int accounts = network.accounts().size();
    int places = network.places().size();
    carried = new double[2][accounts];
    firstTime = new double[accounts];
    Arrays.fill(firstTime, Double.NaN);
    highest = new double[places];
    Arrays.fill(highest, Double.NEGATIVE_INFINITY);
    highestTime = new double[places];
    received = new double[places];
    inSight =
        IntStream.range(0, places)
            .filter(place -> isInSight(network.places().get(place).kind()))
            .toArray();
    history = new LevelHistory(inSight);
  }

  private static boolean isInSight(Place.Kind kind) {
    return switch (kind) {
      case VESSEL, BASIN, FLOOR -> true;
      case COLUMN, TEE, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
    };
  }

  void begin(double time, double[] levelsNow, double[] flowsNow) {
    flowsAtStart = flowsNow.clone();
    note(time, levelsNow);
  }

  /** Tells what still came over ways that carried water at first and carry none at the end. */
  void tellWhatRanOut(double[] flowsAtEnd) {
    for (int a = 0; a < flowsAtEnd.length; a++) {
      Account account = network.accounts().get(a);
      Place target = network.places().get(account.to());
      boolean ranOut = flowsAtStart[a] > RAN && Math.abs(flowsAtEnd[a]) < RAN / 100;
      if (ranOut && account.inside() && target.kind() != Place.Kind.COLUMN) {
        double still = carried[0][a] + viaColumns(account);
        if (still > WORTH_TELLING) {
          story.tell(0, What.RUNS_OUT, account.path(), target.id(), still);
        }
      }
    }
  }

  /** Water of the same run that came out of its columns at the same end. */
  private double viaColumns(Account through) {
    double sum = 0;
    for (int a = 0; a < carried[1].length; a++) {
      Account other = network.accounts().get(a);
      boolean outOfColumn = network.places().get(other.to()).kind() == Place.Kind.COLUMN;
      boolean sameRun = other.path().equals(through.path()) && other.way() == through.way();
      if (outOfColumn && sameRun && other.from() == through.to()) {
        sum += carried[1][a] - carried[0][a];
      }
    }
    return sum;
  }

  private void note(double time, double[] levelsNow) {
    history.add(time, levelsNow);
    for (int place = 0; place < levelsNow.length; place++) {
      if (levelsNow[place] > highest[place]) {
        highest[place] = levelsNow[place];
        highestTime[place] = time;
      }
    }
  }

  /** Takes down a step that was taken. */
  void take(double start, double h, double[] moved, Crossing within, double[] levelsAtEnd) {
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      int direction = moved[a] >= 0 ? 0 : 1;
      double amount = Math.abs(moved[a]);
      double before = carried[direction][a];
      carried[direction][a] += amount;
      received[moved[a] >= 0 ? account.to() : account.from()] += amount;
      Place target = network.places().get(direction == 0 ? account.to() : account.from());
      if (Double.isNaN(firstTime[a])
          && !account.inside()
          && target.kind() != Place.Kind.COLUMN
          && carried[direction][a] > COUNTS) {
        firstTime[a] = begins(a, start, h, before, amount, within);
        if (told.add(account.path() + " " + target.id())) {
          tellFirst(a, firstTime[a], direction);
        }
      }
    }
    note(start + h, levelsAtEnd);
  }

  /**
   * Takes down that a cycle goes on so many times more; changes the volumes. A column that differs
   * a little from cycle to cycle does not drift away: that water stays with the place at its end.
   */
  void repeat(Cycle cycle, double times, double[] volumes) {
    double[] before = volumes.clone();
    for (int a = 0; a < network.accounts().size(); a++) {
      carry(a, cycle.carried().get(0)[a] * times, volumes);
      carry(a, -cycle.carried().get(1)[a] * times, volumes);
    }
    for (Pipe pipe : network.pipes()) {
      for (int side = 0; side < 2; side++) {
        int column = pipe.leg(side).column();
        carry(pipe.ownColumnSlot(side), before[column] - volumes[column], volumes);
      }
    }
  }

  /** Takes down water over an account, backwards if negative (m³); changes the volumes it joins. */
  void carry(int slot, double water, double[] volumes) {
    Account account = network.accounts().get(slot);
    carried[water >= 0 ? 0 : 1][slot] += Math.abs(water);
    received[water >= 0 ? account.to() : account.from()] += Math.abs(water);
    volumes[account.from()] -= water;
    volumes[account.to()] += water;
  }

  /** When water begins to pass: for an edge when its level reaches the crest, else by share. */
  private double begins(
      int a, double start, double h, double before, double amount, Crossing within) {
    for (Path path : network.paths()) {
      if (path.slot() == a && path instanceof Path.Edge edge) {
        double crest = edge.crest();
        Place from = network.places().get(edge.from());
        double first = from.table().level(within.volume(edge.from(), 0)) - crest;
        double last = from.table().level(within.volume(edge.from(), 1)) - crest;
        if (first < 0 && last > 0) {
          return start
              + h
                  * Crossing.find(
                      share -> crest - from.table().level(within.volume(edge.from(), share)),
                      -first,
                      -last,
                      Math.min(1, 1e-3 / h));
        }
        return start;
      }
    }
    return start + h * Math.clamp((COUNTS - before) / amount, 0, 1);
  }

  private void tellFirst(int a, double time, int direction) {
    Account account = network.accounts().get(a);
    String from = network.places().get(direction == 0 ? account.from() : account.to()).id();
    Place to = network.places().get(direction == 0 ? account.to() : account.from());
    What what =
        switch (account.way()) {
          case RIM -> What.SPILLS;
          case SILL -> What.SILL_REACHED;
          case LEAK, PARTED, THROWN -> What.LEAKS;
          case BURST -> What.BURSTS;
          case RUN, WEIR, POURED, HELD_BY_DEVICE -> What.BEGINS_TO_FLOW;
        };
    story.tell(time, what, account.way() == Ledger.Way.RIM ? from : account.path(), to.id());
  }

  /** Places whose levels a person sees: vessels, basins and floors. */
  int[] inSight() {
    return inSight.clone();
  }

  /** Levels over time of the places in sight. */
  LevelHistory history() {
    return history;
  }
}
