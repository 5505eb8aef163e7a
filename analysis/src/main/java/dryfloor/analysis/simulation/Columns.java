package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LegProfile;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.Place;

/** Where the water stands in the two legs of a pipe with air at its crest, and where it belongs. */
final class Columns {

  /** A column whose end rises or falls so slowly is left at rest until it wakes (m³/s). */
  private static final double SLOW = 1e-9;

  /** A column that lacks or has too much no more than this is where it belongs (m³). */
  static final double THERE = 5e-7;

  /** A column is at the crest when it is this near (m). */
  static final double BRIM = 1e-5;

  /** Share of a leg's volume with which it is full. */
  private static final double ALL = 1 - 1e-6;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;

  /** By pipe and side: see {@link #brim}. */
  private final double[][] brims;

  Columns(FlowNetwork network, State state, FlowField field) {
    this.network = network;
    this.state = state;
    this.field = field;
    brims = new double[network.pipes().size()][2];
    for (int i = 0; i < brims.length; i++) {
      brims[i][0] = brimOf(network.pipes().get(i), 0);
      brims[i][1] = brimOf(network.pipes().get(i), 1);
    }
  }

  private double brimOf(Pipe pipe, int side) {
    Pipe.Leg leg = pipe.leg(side);
    LevelTable table = network.places().get(leg.column()).table();
    double fillsOver = Math.max(pipe.crest(), leg.end().elevation() + LegProfile.LEVEL_STRETCH);
    return leg.negligible()
        ? pipe.crest()
        : Math.clamp(table.level(leg.volume() * ALL), pipe.crest(), fillsOver);
  }

  /**
   * Where the water in a leg stands once the leg is full (m): at the crest, or a little above where
   * the whole leg lies level. Water at the height of such a leg lies in it, but does not fill it:
   * open at its end, it runs empty.
   */
  double brim(int pipe, int side) {
    return brims[pipe][side];
  }

  /** Whether a column follows the level at its end, which moves by more than its own water. */
  boolean isTakenAlong(Pipe pipe, int side) {
    int place = pipe.leg(side).end().place();
    int column = pipe.leg(side).column();
    boolean covered =
        network.places().get(place).kind().isPool()
            && field.levels[place] > pipe.leg(side).end().elevation();
    double speed = covered ? (field.gains[place] + field.gains[column]) / field.areas[place] : 0;
    return Math.abs(speed) * field.areas[column] > SLOW;
  }

  /** Water that a column lacks or has too much (m³). */
  double misplaced(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    LevelTable table = network.places().get(pipe.leg(side).column()).table();
    double there = table.volume(Math.min(belongs(pipe, side), brim(i, side)));
    return Math.abs(there - field.volume(pipe.leg(side).column()));
  }

  /** Whether anything would pass if the column were let go: no valve or check valve holds it. */
  boolean wouldFlow(PipeBranch probe) {
    probe.solve(field.head(probe.ends[0]), field.head(probe.ends[1]), field.levels);
    return probe.flow != 0;
  }

  /**
   * Whether a leg is full and the water at its end keeps it so. The head of a full junction says
   * nothing about that: it may be this very leg that lifts it.
   */
  boolean standsAtCrest(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    return !atFullTee(pipe, side)
        && column(pipe, side) >= brim(i, side) - BRIM
        && belongs(pipe, side) >= brim(i, side);
  }

  boolean atFullTee(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    return end.atJunction() && state.teeFull[end.junction()];
  }

  boolean rises(Pipe pipe, int side) {
    return field.gains[pipe.leg(side).column()] > 0;
  }

  /** Where the water in a leg stands (m). */
  double column(Pipe pipe, int side) {
    return field.levels[pipe.leg(side).column()];
  }

  /** Where the water in a leg would stand if it were free to go there (m). */
  double belongs(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    if (end.atJunction() && state.teeFull[end.junction()]) {
      return state.teeHeads[end.junction()];
    }
    Place place = network.places().get(end.place());
    return switch (place.kind()) {
      case SUPPLY -> place.head();
      case DRAIN, BEYOND, OUTSIDE -> Math.max(place.head(), end.elevation());
      case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE ->
          Math.max(field.levels[end.place()], end.elevation());
    };
  }
}
