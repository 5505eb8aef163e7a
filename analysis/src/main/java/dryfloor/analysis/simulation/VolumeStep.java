package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;

/**
 * One step of the volumes in time: the linearly implicit pair of order 2(3) of Shampine and
 * Reichelt, The MATLAB ODE Suite, SIAM J. Sci. Comput. 18 (1997) 1–22, section 3. It is L-stable,
 * so a chamber that settles in milliseconds does not hold back a step of hours.
 *
 * <p>The step is taken account by account: what leaves a place over an account arrives at the other
 * end of it to the last bit, so water is kept to rounding whatever the step's error is. The matrix
 * of the step is an M-matrix, because every flow rises with the level it comes from and falls with
 * the level it goes to.
 */
final class VolumeStep {

  private static final double D = 1 / (2 + Math.sqrt(2));
  private static final double E32 = 6 + Math.sqrt(2);

  /** No step may leave a place below empty by more than this many times the error allowed. */
  private static final double BELOW_EMPTY = 5;

  /** The mean flow of a step may lie so much of their range out of that of its three flows. */
  private static final double OUT_OF_RANGE = 0.1;

  /** Keeps the matrix regular where every branch at a full tee is shut (m²/s). */
  private static final double LEAST_SLOPE = 1e-14;

  private final AccountEnds ends;
  private final FlowField field;
  private final Accuracy accuracy;
  private final Place.Kind[] kinds;
  private final int places;
  private final int accounts;

  private final SparseMatrix matrix;

  // Where the step starts: areas (m²), gains, flows (m³/s) and heads of the full tees (m).
  private final double[] areas;
  final double[] gains;
  private final double[] flows;
  private final double[] teeHeads;

  // Speeds of the three stages: of the volumes (m³/s), and of levels and heads (m/s).
  private final double[] k1;
  private final double[] k2;
  private final double[] k3;
  private final double[] rises;
  private final double[] gainsBetween;
  private final double[] flowsBetween;
  private final double[] trial;

  /** Water over each account during the step (m³). */
  final double[] moved;

  /** Volumes at the end of the step (m³). */
  final double[] volumes;

  VolumeStep(FlowNetwork network, FlowField field, Accuracy accuracy) {
    this.ends = field.ends;
    this.field = field;
    this.accuracy = accuracy;
    places = network.places().size();
    kinds = network.places().stream().map(Place::kind).toArray(Place.Kind[]::new);
    accounts = network.accounts().size();
    matrix = new SparseMatrix(places);
    ends.announceTo(matrix);
    areas = new double[places];
    gains = new double[places];
    teeHeads = new double[network.tees().size()];
    k1 = new double[places];
    k2 = new double[places];
    k3 = new double[places];
    rises = new double[places];
    gainsBetween = new double[places];
    flows = new double[accounts];
    flowsBetween = new double[accounts];
    trial = new double[places];
    moved = new double[accounts];
    volumes = new double[places];
  }

  private boolean isPool(int place) {
    return ends.pool[place];
  }

  /** Takes the field as it is as the start of the next step. */
  void start() {
    System.arraycopy(field.areas, 0, areas, 0, places);
    System.arraycopy(field.gains, 0, gains, 0, places);
    System.arraycopy(field.flows, 0, flows, 0, accounts);
    field.copyTeeHeads(teeHeads);
  }

  /**
   * Tries a step from the start. Afterwards the field holds the flows at its end.
   *
   * @param from volumes at the beginning (m³)
   * @param slopes of the flows at the beginning
   * @param h length of the step (s)
   * @param slopesAtEnd takes the slopes of the flows at the end
   * @return the error against what is allowed; the step is good up to 1
   */
  double take(double[] from, Slopes slopes, double h, Slopes slopesAtEnd) {
    factor(slopes, h * D);

    solve(gains, k1);
    for (int p = 0; p < places; p++) {
      trial[p] = from[p] + 0.5 * h * k1[p];
    }
    field.guessTeeHeads(teeHeads, rises, 0.5 * h);
    field.evaluate(trial);
    System.arraycopy(field.gains, 0, gainsBetween, 0, places);
    System.arraycopy(field.flows, 0, flowsBetween, 0, accounts);
    System.arraycopy(field.flows, 0, moved, 0, accounts);

    for (int p = 0; p < places; p++) {
      trial[p] = gainsBetween[p] - k1[p];
    }
    solve(trial, k2);
    // k2 so far is the correction that the accounts see through their slopes.
    for (int entry = 0; entry < slopes.size(); entry++) {
      moved[slopes.slot(entry)] += h * D * slopes.value(entry) * rises[slopes.place(entry)];
    }
    System.arraycopy(from, 0, volumes, 0, places);
    for (int a = 0; a < accounts; a++) {
      moved[a] *= h;
    }
    ends.move(moved, volumes);
    for (int p = 0; p < places; p++) {
      k2[p] += k1[p];
    }
    field.evaluate(volumes, slopesAtEnd);
    for (int p = 0; p < places; p++) {
      trial[p] = field.gains[p] - E32 * (k2[p] - gainsBetween[p]) - 2 * (k1[p] - gains[p]);
    }
    solve(trial, k3);
    return error(from, h);
  }

  private double error(double[] from, double h) {
    double worst = unexplained(h) / accuracy.volume();
    for (int p = 0; p < places; p++) {
      if (isPool(p)) {
        double allowed = allowed(p);
        double error = Math.abs(h / 6 * (k1[p] - 2 * k2[p] + k3[p]));
        double belowEmpty = volumes[p] < from[p] ? -volumes[p] : 0;
        worst = Math.max(worst, Math.max(error, belowEmpty / BELOW_EMPTY) / allowed);
      }
    }
    return worst;
  }

  /**
   * The most water that a step moved over an account beyond what its flows at the start, between
   * and at the end can explain (m³): against all three, or out of their range by more than a tenth
   * of its width. No level need feel it, for what one account brings wrongly another may take away.
   */
  private double unexplained(double h) {
    double most = 0;
    for (int a = 0; a < accounts; a++) {
      double least = Math.min(Math.min(flows[a], flowsBetween[a]), field.flows[a]);
      double greatest = Math.max(Math.max(flows[a], flowsBetween[a]), field.flows[a]);
      double range = OUT_OF_RANGE * (greatest - least);
      double lowest = least >= 0 ? Math.max(least - range, 0) : least - range;
      double highest = greatest <= 0 ? Math.min(greatest + range, 0) : greatest + range;
      most = Math.max(most, Math.max(h * lowest - moved[a], moved[a] - h * highest));
    }
    return most;
  }

  /** Error of the volume of a place that a step may make (m³). */
  private double allowed(int place) {
    return switch (kinds[place]) {
      case VESSEL, BASIN, FLOOR, DEVICE -> accuracy.allowed(areas[place]);
      case COLUMN, TEE -> accuracy.inPipes();
      case SUPPLY, DRAIN, BEYOND, OUTSIDE -> Double.POSITIVE_INFINITY;
    };
  }

  /**
   * Builds and factors A − hD·J, where A are the areas and J the slopes by levels: the step's I −
   * hD·J in speeds of levels instead of volumes. A full tee has no area; its row says that what
   * flows in flows out.
   */
  private void factor(Slopes slopes, double reach) {
    matrix.clear();
    for (int p = 0; p < places; p++) {
      matrix.add(p, p, field.isFullTee(p) ? reach * LEAST_SLOPE : areas[p]);
    }
    for (int entry = 0; entry < slopes.size(); entry++) {
      int place = slopes.place(entry);
      double share = reach * slopes.value(entry);
      int from = ends.from[slopes.slot(entry)];
      int to = ends.to[slopes.slot(entry)];
      if (isPool(from)) {
        matrix.add(from, place, share);
      }
      if (isPool(to)) {
        matrix.add(to, place, -share);
      }
    }
    matrix.factor();
  }

  /** Solves (I − hD·J) k = b, and keeps the speeds of the levels that belong to it. */
  private void solve(double[] b, double[] k) {
    for (int p = 0; p < places; p++) {
      rises[p] = field.isFullTee(p) ? 0 : b[p];
    }
    matrix.solve(rises);
    for (int p = 0; p < places; p++) {
      k[p] = field.isFullTee(p) ? 0 : areas[p] * rises[p];
    }
  }
}
