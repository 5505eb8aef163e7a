package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Ending;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Sees when it is over.
 *
 * <p>Levels that only creep towards a crest are followed down to {@link #STILL}: the steps grow as
 * fast as the tail slows down, so its limit costs a few steps, not hours of them.
 */
final class EndWatch {

  /** A level slower than this stands still (m/s): a tenth of a micrometre in an hour. */
  private static final double STILL = 3e-11;

  /** A level slower than this at the end of the unattended time is at rest (m/s): 0.1 mm/h. */
  private static final double AS_GOOD_AS_STILL = 1e-4 / 3600;

  private static final double HOUR = 3600;

  /** How much of a short unattended time is looked back over to see what still moves. */
  private static final double LAST_PART = 0.25;

  /** A flow from outside smaller than this is none (m³/s): 4 mL an hour. */
  private static final double NO_FLOW = 1e-9;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Recorder recorder;
  private final Agenda agenda;
  private final CycleWatch cycles;
  private final Salt salt;
  private final Place.Kind[] kinds;

  /** What comes in from all supplies when all is well (m³/s). */
  private final double usualInflow;

  private double steadySince = Double.NaN;

  /** What comes in on the whole where levels come and go (m³/s). */
  private OptionalDouble meanInflow = OptionalDouble.empty();

  /** Up to when all that moved has been counted (s). */
  private double countedUntil;

  EndWatch(
      FlowNetwork network,
      State state,
      FlowField field,
      Recorder recorder,
      Agenda agenda,
      Salt salt,
      double usualInflow) {
    this.salt = salt;
    this.kinds = network.places().stream().map(Place::kind).toArray(Place.Kind[]::new);
    this.usualInflow = usualInflow;
    this.network = network;
    this.state = state;
    this.field = field;
    this.recorder = recorder;
    this.agenda = agenda;
    this.cycles = new CycleWatch(network, state, field, recorder);
  }

  /** Looks whether it repeats itself, after modes have changed. */
  void modesChanged() {
    if (!agenda.hasAppointment()) {
      cycles.look();
    }
  }

  /** Whether the end is reached. */
  boolean reached() {
    boolean still = speed(fastest()) < STILL && agenda.next() == Double.POSITIVE_INFINITY;
    if (!still) {
      steadySince = Double.NaN;
    } else if (Double.isNaN(steadySince)) {
      steadySince = state.time;
    }
    return state.time >= network.away()
        || (still && inflow() - usualInflow < NO_FLOW)
        || cycles.found().isPresent();
  }

  /** Whether it would end because all stands still. */
  boolean isStill() {
    return !Double.isNaN(steadySince) && cycles.found().isEmpty() && state.time < network.away();
  }

  /** Up to when water and salt have been counted (s); known after {@link #ending}. */
  double countedUntil() {
    return countedUntil;
  }

  /** What kind of end it is. */
  Ending ending() {
    salt.finish();
    countedUntil = state.time;
    if (cycles.found().isPresent()) {
      return ofCycle(cycles.found().get());
    }
    Optional<LastCycles> coming = state.time < network.away() ? Optional.empty() : lastCycles();
    if (coming.isPresent()) {
      return onTheWhole(coming.get());
    }
    int fastest = mostChanged();
    double change = recorder.changeSince(state.time - lookedBack(), fastest) / lookedBack();
    boolean still = speed(fastest()) < STILL || Math.abs(change) <= AS_GOOD_AS_STILL;
    if (still && inflow() - usualInflow >= NO_FLOW) {
      return new Ending.Continues(recorder.arrival(), inflow() - usualInflow);
    }
    if (!still) {
      return new Ending.StillMoving(state.time, network.places().get(fastest).id(), change);
    }
    double arrival = recorder.arrival();
    circulateOn();
    return new Ending.AtRest(arrival);
  }

  /** An hour, or less where nobody was to stay away for much longer (s). */
  private double lookedBack() {
    return Math.min(HOUR, LAST_PART * state.time);
  }

  /** The place in sight whose level changed most of late. */
  private int mostChanged() {
    int most = -1;
    double change = -1;
    for (int place = 0; place < field.levels.length; place++) {
      if (network.places().get(place).kind().isShown()) {
        double own = Math.abs(recorder.changeSince(state.time - lookedBack(), place));
        most = own > change ? place : most;
        change = Math.max(own, change);
      }
    }
    return most;
  }

  private Optional<LastCycles> lastCycles() {
    List<Integer> places =
        IntStream.range(0, field.levels.length)
            .filter(place -> network.places().get(place).kind().isShown())
            .boxed()
            .toList();
    return LastCycles.of(recorder, places, agenda.lastAppointment())
        .filter(cycles -> cycles.isRecent(recorder));
  }

  /** What levels that come and go do on the whole, whatever they do at the very end. */
  private Ending onTheWhole(LastCycles cycles) {
    int fastest = cycles.place();
    for (int place = 0; place < field.levels.length; place++) {
      if (network.places().get(place).kind().isShown()
          && Math.abs(cycles.trend(recorder, place)) > Math.abs(cycles.trend(recorder, fastest))) {
        fastest = place;
      }
    }
    double trend = cycles.trend(recorder, fastest);
    if (Math.abs(trend) > AS_GOOD_AS_STILL) {
      return new Ending.StillMoving(state.time, network.places().get(fastest).id(), trend);
    }
    meanInflow = OptionalDouble.of(cycles.inflow(recorder));
    double rate = cycles.inflow(recorder) - usualInflow;
    return rate < NO_FLOW
        ? new Ending.UpAndDown(
            state.time,
            network.places().get(cycles.place()).id(),
            cycles.lowest(recorder),
            cycles.highest(recorder),
            cycles.period(recorder))
        : new Ending.Continues(recorder.time(cycles.first()), rate);
  }

  /** Levels stand still, but what circulates goes on, and mixes, until somebody comes. */
  private void circulateOn() {
    double[] moved = Circulation.of(network, field.flows);
    for (int a = 0; a < moved.length; a++) {
      moved[a] *= Math.max(network.away() - state.time, 0);
    }
    salt.carry(state.volumes, moved);
    salt.finish();
    recorder.goOn(state.time, moved, state.volumes);
    countedUntil = Math.max(network.away(), state.time);
  }

  /** A cycle goes on to the end of the unattended time; what it brings in or spills adds up. */
  private Ending ofCycle(Cycle cycle) {
    double times = Math.max(network.away() - state.time, 0) / cycle.period();
    double perPeriod = 0;
    for (int a = 0; a < network.accounts().size(); a++) {
      double net = cycle.carried().get(0)[a] - cycle.carried().get(1)[a];
      perPeriod += isSupply(network.accounts().get(a).from()) ? net : 0;
      perPeriod -= isSupply(network.accounts().get(a).to()) ? net : 0;
    }
    meanInflow = OptionalDouble.of(perPeriod / cycle.period());
    double rate = perPeriod / cycle.period() - usualInflow;
    if (rate < NO_FLOW) {
      return new Ending.Repeats(cycle.since(), cycle.period());
    }
    double[] moved = new double[network.accounts().size()];
    for (int a = 0; a < moved.length; a++) {
      moved[a] = (cycle.carried().get(0)[a] - cycle.carried().get(1)[a]) * times;
    }
    double[] through = Circulation.throughRuns(network, moved);
    salt.carry(state.volumes, through);
    salt.finish();
    recorder.repeat(cycle, times, network.away(), through, state.volumes);
    countedUntil = network.away();
    return new Ending.Continues(cycle.since(), rate);
  }

  private boolean isSupply(int place) {
    return network.places().get(place).kind() == Place.Kind.SUPPLY;
  }

  /** What comes in when all is as it is at the end, on the whole (m³/s). */
  double usualInflow() {
    return meanInflow.orElseGet(this::inflow);
  }

  /** Water that comes in from all supplies, and from drains that back up (m³/s). */
  private double inflow() {
    double sum = 0;
    for (int place = 0; place < field.gains.length; place++) {
      sum +=
          switch (network.places().get(place).kind()) {
            case SUPPLY -> -field.gains[place];
            case DRAIN -> Math.max(-field.gains[place], 0);
            case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE, BEYOND, OUTSIDE -> 0;
          };
    }
    return sum;
  }

  private int fastest() {
    int fastest = 0;
    double most = speed(0);
    for (int place = 1; place < field.gains.length; place++) {
      double speed = speed(place);
      if (speed > most) {
        fastest = place;
        most = speed;
      }
    }
    return fastest;
  }

  private double speed(int place) {
    return switch (kinds[place]) {
      case VESSEL, BASIN, FLOOR, COLUMN ->
          Math.abs(field.gains[place]) / Math.max(field.areas[place], 1e-3);
      case DEVICE -> Math.abs(field.gains[place]);
      case TEE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> 0;
    };
  }
}
