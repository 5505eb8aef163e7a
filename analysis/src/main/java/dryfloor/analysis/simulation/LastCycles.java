package dryfloor.analysis.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The last times that a level went up and down, for what water does on the whole where it comes and
 * goes: from one peak of the level that swings most to a later one.
 *
 * @param place whose level that is
 * @param first moment of the record: the first of the peaks
 * @param last moment of the record: the last of the peaks
 * @param periods between them
 */
record LastCycles(int place, int first, int last, int periods) {

  /** A level that turns back by less does not swing (m). */
  private static final double SWING = 5e-4;

  private static final int MOST_PERIODS = 4;

  /** So many periods after the last peak they count as over. */
  private static final double STILL_GOING_ON = 1.5;

  /**
   * The last cycles of the place that swings most in them, if any level swings.
   *
   * @param places whose levels are looked at
   * @param since when the water has been left to itself (s): what somebody took and poured before
   *     is no cycle
   */
  static Optional<LastCycles> of(Recorder recorder, List<Integer> places, double since) {
    Optional<LastCycles> most = Optional.empty();
    double widest = 0;
    for (int place : places) {
      List<Integer> peaks = lastPeaks(recorder, place, since);
      if (peaks.size() > 1) {
        LastCycles cycles =
            new LastCycles(place, peaks.getFirst(), peaks.getLast(), peaks.size() - 1);
        double swing = cycles.highest(recorder) - cycles.lowest(recorder);
        if (swing > widest) {
          widest = swing;
          most = Optional.of(cycles);
        }
      }
    }
    return most;
  }

  /** The last peaks of a level in order: moments from which it fell on both sides. */
  private static List<Integer> lastPeaks(Recorder recorder, int place, double since) {
    List<Integer> peaks = new ArrayList<>();
    boolean rising = false;
    int extreme = recorder.moments() - 1;
    for (int moment = extreme;
        moment >= recorder.firstMoment()
            && recorder.time(moment) >= since
            && peaks.size() <= MOST_PERIODS;
        moment--) {
      double turned = recorder.level(moment, place) - recorder.level(extreme, place);
      if (rising ? turned > 0 : turned < 0) {
        extreme = moment;
      } else if (Math.abs(turned) > SWING) {
        if (rising) {
          peaks.add(extreme);
        }
        rising = !rising;
        extreme = moment;
      }
    }
    return peaks.reversed();
  }

  /** Whether they are still going on at the end of the record, as far as one can tell. */
  boolean isRecent(Recorder recorder) {
    double since = recorder.time(recorder.moments() - 1) - recorder.time(last);
    return since < STILL_GOING_ON * period(recorder);
  }

  /** Lowest level of the place in these cycles (m). */
  double lowest(Recorder recorder) {
    double lowest = Double.POSITIVE_INFINITY;
    for (int moment = first; moment <= last; moment++) {
      lowest = Math.min(lowest, recorder.level(moment, place));
    }
    return lowest;
  }

  /** Highest level of the place in these cycles (m). */
  double highest(Recorder recorder) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int moment = first; moment <= last; moment++) {
      highest = Math.max(highest, recorder.level(moment, place));
    }
    return highest;
  }

  /** How fast the level of a place rises on the whole (m/s). */
  double trend(Recorder recorder, int of) {
    return (recorder.level(last, of) - recorder.level(first, of)) / duration(recorder);
  }

  /** What comes in from all supplies on the whole (m³/s). */
  double inflow(Recorder recorder) {
    return (recorder.cameIn(last) - recorder.cameIn(first)) / duration(recorder);
  }

  /** Length of one cycle (s). */
  double period(Recorder recorder) {
    return duration(recorder) / periods;
  }

  private double duration(Recorder recorder) {
    return recorder.time(last) - recorder.time(first);
  }
}
