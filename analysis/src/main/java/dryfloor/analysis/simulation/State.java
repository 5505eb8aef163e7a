package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.HashSet;
import java.util.Set;

/** Everything that changes while the water moves. */
final class State {

  /** Seconds since the failure. */
  double time;

  /** Water in each place (m³); what went out since the beginning, for the outside. */
  final double[] volumes;

  /** Salinity times volume in each place (g/kg · m³). */
  final double[] salt;

  final PipeMode[] pipes;

  /** Which tees are full of water. */
  final boolean[] teeFull;

  /** Which tees have opened and not yet run off to half their bore. */
  final boolean[] teeRunsOff;

  /** Heads of the tees that are full (m). */
  final double[] teeHeads;

  /** Siphon breaks that ever stood open to the air with less than its pressure behind them. */
  final Set<String> openedHoles = new HashSet<>();

  /** Runs that stayed open although water came so fast that they might as well have filled. */
  final Set<String> doubtfulPrimings = new HashSet<>();

  final Board board;

  State(FlowNetwork network) {
    volumes = new double[network.places().size()];
    salt = new double[volumes.length];
    pipes = new PipeMode[network.pipes().size()];
    for (int i = 0; i < pipes.length; i++) {
      pipes[i] = new PipeMode();
    }
    int tees = network.tees().size();
    teeFull = new boolean[tees];
    teeRunsOff = new boolean[tees];
    teeHeads = new double[tees];
    board = new Board(network);
  }
}
