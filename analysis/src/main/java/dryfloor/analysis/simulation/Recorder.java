package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.Succession;
import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Keeps the books: water over each account, levels over time, highest levels, first times. */
final class Recorder {

  /** Water that counts as having arrived (m³). */
  static final double COUNTS = 1e-6;

  /** A level that stays within this of its last one has arrived (m). */
  private static final double ARRIVED = 1e-3;

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

  /** Levels of the places that are shown, and what has come in, over time. */
  private final LevelHistory history;

  /** By place: the column of the history, or -1. */
  private final int[] columnOf;

  private final double[] row;

  private final AccountEnds ends;

  /** By account: 1 where it brings water from a supply, -1 where back to one, 0 elsewhere. */
  private final int[] fromSupply;

  /** What has come in from supplies (m³). */
  private double cameInSoFar;

  /** Water over each account since the beginning, backwards counted off (m³). */
  private final double[] passed;

  private final FlowHistory flows;

  /** Moment of the record from which on the same things were built in. */
  private final int firstMoment;

  /** Begins books. */
  Recorder(FlowNetwork network, Story story) {
    this(network, story, new FlowHistory(network.accounts().size()), Optional.empty());
  }

  /** Goes on with the books of a network before. */
  Recorder(Recorder before, Succession succession) {
    this(
        succession.network(),
        before.story,
        new FlowHistory(before.finishedFlows(), succession, succession.network().accounts().size()),
        Optional.of(before.history));
    for (int direction = 0; direction < 2; direction++) {
      succession.accounts(before.carried[direction], carried[direction]);
    }
    succession.places(before.highest, highest);
    succession.places(before.highestTime, highestTime);
    succession.accounts(before.firstTime, firstTime);
    succession.places(before.received, received);
    succession.accounts(before.passed, passed);
    told.addAll(before.told);
    cameInSoFar = before.cameInSoFar;
  }

  private Recorder(
      FlowNetwork network, Story story, FlowHistory flows, Optional<LevelHistory> earlier) {
    this.network = network;
    this.story = story;
    this.flows = flows;
    int accounts = network.accounts().size();
    int places = network.places().size();
    ends = new AccountEnds(network);
    fromSupply =
        network.accounts().stream().mapToInt(account -> fromSupply(network, account)).toArray();
    carried = new double[2][accounts];
    firstTime = new double[accounts];
    Arrays.fill(firstTime, Double.NaN);
    highest = new double[places];
    Arrays.fill(highest, Double.NEGATIVE_INFINITY);
    highestTime = new double[places];
    received = new double[places];
    columnOf = new int[places];
    int columns = 0;
    for (int place = 0; place < places; place++) {
      columnOf[place] = network.places().get(place).kind().isShown() ? columns++ : -1;
    }
    row = new double[columns + 1];
    history = earlier.orElseGet(() -> new LevelHistory(row.length));
    firstMoment = earlier.map(LevelHistory::moments).orElse(1) - 1;
    passed = new double[accounts];
  }

  private FlowHistory finishedFlows() {
    flows.changed(moments());
    return flows;
  }

  void begin(double time, double[] levelsNow) {
    note(time, levelsNow);
  }

  private void note(double time, double[] levelsNow) {
    for (int place = 0; place < columnOf.length; place++) {
      if (columnOf[place] >= 0) {
        row[columnOf[place]] = levelsNow[place];
      }
    }
    row[row.length - 1] = cameInSoFar;
    int kept = history.keptSoFar();
    history.add(time, row);
    flows.add(time, passed, history.keptSoFar() > kept);
    noteHighest(time, levelsNow);
  }

  /**
   * Takes down levels that came to be without a step, as where somebody poured water in or took it
   * out.
   */
  void noteHighest(double time, double[] levelsNow) {
    for (int place = 0; place < levelsNow.length; place++) {
      noteHighest(place, time, levelsNow[place]);
    }
  }

  private void noteHighest(int place, double time, double level) {
    if (level > highest[place]) {
      highest[place] = level;
      highestTime[place] = time;
    }
  }

  /** Takes down a step that was taken. */
  void take(double start, double h, double[] moved, Crossing within, double[] levelsAtEnd) {
    for (int a = 0; a < moved.length; a++) {
      if (moved[a] == 0) {
        continue;
      }
      double before = carried[direction(moved[a])][a];
      book(a, moved[a]);
      passed[a] += moved[a];
      if (isFirst(a, moved[a])) {
        firstTime[a] = begins(a, direction(moved[a]), start, h, before, Math.abs(moved[a]), within);
        tellFirst(a, firstTime[a], direction(moved[a]));
      }
    }
    note(start + h, levelsAtEnd);
  }

  /**
   * Takes down what goes round from a time on when all levels stand still (m³ over each account);
   * changes the volumes of the outside.
   */
  void goOn(double time, double[] moved, double[] volumes) {
    for (int a = 0; a < moved.length; a++) {
      book(a, moved[a]);
      changeOutside(network.accounts().get(a).from(), -moved[a], volumes);
      changeOutside(network.accounts().get(a).to(), moved[a], volumes);
      if (isFirst(a, moved[a])) {
        firstTime[a] = time;
        tellFirst(a, time, direction(moved[a]));
      }
    }
  }

  /** What goes round leaves every place of the drawing as full as it was. */
  private void changeOutside(int place, double volume, double[] volumes) {
    if (!network.places().get(place).kind().isPool()) {
      volumes[place] += volume;
    }
  }

  private void book(int a, double moved) {
    carried[direction(moved)][a] += Math.abs(moved);
    cameInSoFar += fromSupply[a] * moved;
    received[moved >= 0 ? ends.to[a] : ends.from[a]] += Math.abs(moved);
  }

  private static int fromSupply(FlowNetwork network, Account account) {
    return isSupply(network, account.from()) ? 1 : isSupply(network, account.to()) ? -1 : 0;
  }

  private static boolean isSupply(FlowNetwork network, int place) {
    return network.places().get(place).kind() == Place.Kind.SUPPLY;
  }

  private static int direction(double moved) {
    return moved >= 0 ? 0 : 1;
  }

  /** Whether this is the first water to leave by this way for where it should not be. */
  private boolean isFirst(int a, double moved) {
    return Double.isNaN(firstTime[a])
        && carried[direction(moved)][a] > COUNTS
        && leads(network.accounts().get(a), moved);
  }

  /** Whether water over an account leaves its vessel or run, in the direction in which it moves. */
  private boolean leads(Account account, double moved) {
    Place target = network.places().get(moved >= 0 ? account.to() : account.from());
    return !account.inside() && target.kind() != Place.Kind.COLUMN;
  }

  /**
   * Takes down that a cycle goes on so many times more; changes the volumes. A level that rises a
   * little each time stands that much higher when it peaks for the last time.
   *
   * @param end when the last of them is over (s)
   * @param net water over each account in all these times that leaves runs as full as they were
   *     (m³): what a column lacks or has too much after one cycle does not add up
   */
  void repeat(Cycle cycle, double times, double end, double[] net, double[] volumes) {
    double[] before = volumes.clone();
    for (int a = 0; a < net.length; a++) {
      double forward = cycle.carried().get(0)[a] * times;
      double backward = cycle.carried().get(1)[a] * times;
      double more = net[a] - (forward - backward);
      carry(a, forward + Math.max(more, 0), volumes);
      carry(a, -backward + Math.min(more, 0), volumes);
    }
    double begins = history.time(moments() - 1) - cycle.period();
    for (int place = 0; place < volumes.length; place++) {
      if (columnOf[place] >= 0) {
        LevelTable table = network.places().get(place).table();
        double last = table.level(volumes[place]);
        double rise = last - table.level(before[place]);
        noteHighest(
            place, end, Math.max(history.highestSince(begins, columnOf[place]) + rise, last));
      }
    }
  }

  /** Takes down what changes its place without time going by (m³ over each account). */
  void moveAtOnce(double[] moved, double[] volumes) {
    for (int a = 0; a < moved.length; a++) {
      if (moved[a] != 0) {
        carry(a, moved[a], volumes);
        passed[a] += moved[a];
      }
    }
  }

  private void carry(int slot, double water, double[] volumes) {
    Account account = network.accounts().get(slot);
    book(slot, water);
    volumes[account.from()] -= water;
    volumes[account.to()] += water;
  }

  /** When water begins to pass: for an edge when its level reaches the crest, else by share. */
  private double begins(
      int a, int direction, double start, double h, double before, double amount, Crossing within) {
    for (Path path : network.paths()) {
      if (path.slot() == a && path instanceof Path.Edge edge) {
        double crest = edge.crest();
        int above = direction == 0 ? edge.from() : edge.to();
        Place from = network.places().get(above);
        double first = from.table().level(within.volume(above, 0)) - crest;
        double last = from.table().level(within.volume(above, 1)) - crest;
        if (first < 0 && last > 0) {
          return start
              + h
                  * Crossing.find(
                      share -> crest - from.table().level(within.volume(above, share)),
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
    String to = network.places().get(direction == 0 ? account.to() : account.from()).id();
    if (!told.add(account.path() + " " + to)) {
      return;
    }
    switch (account.way()) {
      case RIM -> {
        if (direction == 0) {
          story.tell(time, What.SPILLS, from, to);
        } else {
          story.tell(time, What.FLOODED, to, from);
        }
      }
      case SILL -> story.tell(time, What.SILL_REACHED, from, to);
      case LEAK, PARTED, THROWN -> story.tell(time, What.LEAKS, account.path(), to);
      case BURST -> story.tell(time, What.BURSTS, account.path(), to);
      case RUN, WEIR, POURED, TAKEN, HELD_BY_DEVICE ->
          story.tell(time, What.BEGINS_TO_FLOW, account.path(), to);
    }
  }

  /** From when on every level stays within {@link #ARRIVED} of its last one. */
  double arrival() {
    int last = moments() - 1;
    for (int moment = last - 1; moment >= 0; moment--) {
      for (int column = 0; column < row.length - 1; column++) {
        double away = Math.abs(history.value(moment, column) - history.value(last, column));
        if (away > ARRIVED) {
          double next = Math.abs(history.value(moment + 1, column) - history.value(last, column));
          double share = Math.clamp((away - ARRIVED) / Math.max(away - next, 1e-12), 0, 1);
          return time(moment) + share * (time(moment + 1) - time(moment));
        }
      }
    }
    return 0;
  }

  /** How many moments the record has: those between which levels do not run straight. */
  int moments() {
    return history.moments();
  }

  /** The moment of the record from which on the same things were built in. */
  int firstMoment() {
    return firstMoment;
  }

  /** A moment of the record (s). */
  double time(int moment) {
    return history.time(moment);
  }

  /** Mean flows between the moments of the record, each account being a way. */
  Flows flows(List<Flows.Way> ways) {
    return new Flows(ways, flows.changed(moments()), flows.rates(moments()));
  }

  /** What had come in from supplies by a moment of the record (m³). */
  double cameIn(int moment) {
    return history.value(moment, row.length - 1);
  }

  /** Level of a place that is shown, at a moment of the record (m). */
  double level(int moment, int place) {
    return history.value(moment, columnOf[place]);
  }

  /** How much the level of a place that is shown has changed since a time (m). */
  double changeSince(double time, int place) {
    return history.changeSince(time, columnOf[place]);
  }
}
