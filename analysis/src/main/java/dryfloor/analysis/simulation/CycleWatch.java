package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sees when the water does the same again and again: a pump cycling on its float, a drain that
 * flushes.
 *
 * <p>Each time the modes change, the levels are compared with those at earlier changes into the
 * very same modes. It is a cycle when nine in a row agree so well that what still drifts would not
 * amount to anything in the unattended time; or four, where they also come as regularly as a clock.
 */
final class CycleWatch {

  /** Periods that are compared at least, and at most. */
  private static final int FEWEST_PERIODS = 3;

  private static final int MOST_PERIODS = 8;

  /** Periods that differ by no more than this share are the same. */
  private static final double REGULAR = 1e-4;

  /** Two passes of one cycle are found at levels this near to each other (m). */
  private static final double SAME = 5e-6;

  /** Drift over all the unattended time that does not matter, as seen over most periods (m). */
  private static final double NO_DRIFT = 5e-4;

  /** On a wider surface than this it is the water that must not drift, not the level (m²). */
  private static final double WIDE = 2;

  /**
   * What a run or a junction holds counts as if it went into the narrowest vessel, but one not
   * narrower than this (m²): a leg that fills a little more each time is on its way to somewhere.
   */
  private static final double NARROW = 0.05;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Recorder recorder;
  private final CrestTriggers crests;
  private final double narrowest;
  private final Map<String, Deque<Pass>> passes = new HashMap<>();
  private Optional<Cycle> found = Optional.empty();

  /** What things were like at one change of modes. */
  private static final class Pass {
    private final double time;
    private final double[] levels;
    private final double[] volumes;
    private final double[] forward;
    private final double[] backward;

    private Pass(
        double time, double[] levels, double[] volumes, double[] forward, double[] backward) {
      this.time = time;
      this.levels = levels;
      this.volumes = volumes;
      this.forward = forward;
      this.backward = backward;
    }
  }

  CycleWatch(FlowNetwork network, State state, FlowField field, Recorder recorder) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.recorder = recorder;
    this.crests = new CrestTriggers(network, state, field);
    this.narrowest = narrowest();
  }

  /** Area of the narrowest vessel (m²). */
  private double narrowest() {
    double least = WIDE;
    for (int place = 0; place < state.volumes.length; place++) {
      Place what = network.places().get(place);
      if (what.kind() == Place.Kind.VESSEL) {
        least = Math.min(least, what.table().areaAtVolume(state.volumes[place]));
      }
    }
    return Math.max(least, NARROW);
  }

  Optional<Cycle> found() {
    return found;
  }

  /** Looks after modes have changed. */
  void look() {
    Deque<Pass> sameModes = passes.computeIfAbsent(modes(), modes -> new ArrayDeque<>());
    Pass now =
        new Pass(
            state.time,
            field.levels.clone(),
            state.volumes.clone(),
            recorder.carried[0].clone(),
            recorder.carried[1].clone());
    if (!sameModes.isEmpty() && difference(sameModes.peekLast(), now) > SAME) {
      sameModes.clear();
    }
    sameModes.addLast(now);
    int periods = sameModes.size() - 1;
    if (periods >= FEWEST_PERIODS) {
      Pass first = periods < MOST_PERIODS ? sameModes.peekFirst() : sameModes.pollFirst();
      double remaining = Math.max(network.away() - state.time, 0);
      double drift = difference(first, now) / (now.time - first.time) * remaining;
      if (now.time > first.time
          && drift < NO_DRIFT * periods / MOST_PERIODS
          && (periods == MOST_PERIODS || isRegular(sameModes))) {
        found = Optional.of(cycle(first, now, periods));
      }
    }
  }

  private static boolean isRegular(Deque<Pass> passes) {
    DoubleSummaryStatistics periods = new DoubleSummaryStatistics();
    double last = Double.NaN;
    for (Pass pass : passes) {
      if (!Double.isNaN(last)) {
        periods.accept(pass.time - last);
      }
      last = pass.time;
    }
    return periods.getMax() - periods.getMin() < REGULAR * periods.getAverage();
  }

  private static Cycle cycle(Pass first, Pass now, int periods) {
    double[] forward = new double[now.forward.length];
    double[] backward = new double[forward.length];
    for (int a = 0; a < forward.length; a++) {
      forward[a] = (now.forward[a] - first.forward[a]) / periods;
      backward[a] = (now.backward[a] - first.backward[a]) / periods;
    }
    return new Cycle(first.time, (now.time - first.time) / periods, List.of(forward, backward));
  }

  private double difference(Pass one, Pass other) {
    double most = 0;
    for (int place = 0; place < one.levels.length; place++) {
      double rise = Math.abs(one.levels[place] - other.levels[place]);
      double water = Math.abs(one.volumes[place] - other.volumes[place]);
      double counts =
          switch (network.places().get(place).kind()) {
            case VESSEL, BASIN, FLOOR, DEVICE -> Math.max(field.areas[place] / WIDE, 1) * rise;
            case COLUMN, TEE -> water / narrowest;
            case SUPPLY, DRAIN, BEYOND, OUTSIDE -> 0;
          };
      most = Math.max(most, counts);
    }
    return most;
  }

  private String modes() {
    StringBuilder modes = new StringBuilder();
    for (PipeMode pipe : state.pipes) {
      modes.append(pipe.full ? "F" : Arrays.toString(pipe.legs));
    }
    modes.append(Arrays.toString(state.teeFull));
    for (int part = 0; part < network.parts().size(); part++) {
      modes.append(state.board.runs(part) ? 'r' : '-').append(state.board.opening(part));
    }
    for (int control = 0; control < network.controls().size(); control++) {
      modes.append(state.board.hasActed(control) ? 'a' : '-');
    }
    crests.tellModes(modes);
    return modes.toString();
  }
}
