package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.Trajectory;
import java.util.ArrayList;
import java.util.List;

/** Puts levels and flows over time into a {@link Trajectory}. */
final class TrajectoryBuilder {

  private final FlowNetwork network;
  private final Recorder recorder;

  private TrajectoryBuilder(FlowNetwork network, Recorder recorder) {
    this.network = network;
    this.recorder = recorder;
  }

  /** Levels and flows over the time of a course. */
  static Trajectory of(Course course) {
    return new TrajectoryBuilder(course.network(), course.recorder).build();
  }

  private Trajectory build() {
    List<String> ids = new ArrayList<>();
    List<Integer> shown = new ArrayList<>();
    for (int place = 0; place < network.places().size(); place++) {
      if (network.places().get(place).kind().isShown()) {
        ids.add(network.places().get(place).id());
        shown.add(place);
      }
    }
    double[] times = new double[recorder.moments()];
    double[][] levels = new double[times.length][shown.size()];
    for (int moment = 0; moment < times.length; moment++) {
      times[moment] = recorder.time(moment);
      for (int column = 0; column < shown.size(); column++) {
        levels[moment][column] = recorder.level(moment, shown.get(column));
      }
    }
    return new Trajectory(ids, times, levels, recorder.flows(ways()));
  }

  private List<Flows.Way> ways() {
    return network.accounts().stream()
        .map(
            account ->
                new Flows.Way(
                    account.path(),
                    account.way(),
                    network.places().get(account.from()).id(),
                    network.places().get(account.to()).id()))
        .toList();
  }
}
