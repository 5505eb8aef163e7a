package dryfloor.analysis.simulation;

import java.util.Arrays;

/**
 * The water of some steps, and the salt that it carries.
 *
 * <p>Salinities at the end follow implicitly, so that a small chamber through which much water
 * passes takes the salinity of what enters it; taking the batch once whole and once in halves makes
 * them exact to second order (Richardson). Each account gives to one place what it takes from the
 * other, so salt is kept to rounding. Within a batch water counts as moving evenly.
 */
final class SaltBatch {

  /** Places with less water than this take the salinity of what enters them (m³). */
  static final double LITTLE = 0.001;

  /** Salinities that differ by less are the same (g/kg). */
  static final double SAME = 1e-9;

  /** Keeps the matrix regular where a place is empty (m³). */
  private static final double LEAST_VOLUME = 1e-12;

  /** Difference of a salinity, whole against halves, up to which a part is good (share of it). */
  private static final double ALLOWED = 1e-4;

  private static final double SMALLEST_SHARE = 1.0 / 1024;

  /** What one place gives too much or too little is made good along no more places than this. */
  private static final int MOST_SWEEPS = 50;

  private final AccountEnds ends;
  private final double[] outside;
  private final double[] salt;
  private final double[][] carried;

  /** Water over each account, forwards and backwards (m³). */
  private final double[][] moved;

  /** Volumes when it began, and once it is carried those at its end (m³). */
  final double[] volumes;

  private double greatest;

  /** The accounts over which water moved, the first {@link #count} of these. */
  private final int[] active;

  private int count;

  /** The places with water of their own from or to which water moved. */
  private final boolean[] touched;

  // Work space of the implicit step.
  private final SparseMatrix matrix;
  private final double[] solved;
  private final double[] leaving;
  private final double[] keeps;

  /**
   * Batches of water between these places.
   *
   * @param outside salinities of what comes from outside (g/kg)
   * @param salt of all places (g/kg · m³), changed in place
   * @param carried salt over each account, forwards and backwards (g/kg · m³), added to in place
   */
  SaltBatch(AccountEnds ends, double[] outside, double[] salt, double[][] carried) {
    this.ends = ends;
    this.outside = outside;
    this.salt = salt;
    this.carried = carried;
    int places = salt.length;
    int accounts = ends.from.length;
    moved = new double[2][accounts];
    volumes = new double[places];
    active = new int[accounts];
    touched = new boolean[places];
    matrix = new SparseMatrix(places);
    ends.announceTo(matrix);
    solved = new double[places];
    leaving = new double[places];
    keeps = new double[places];
  }

  /** Begins anew at these volumes (m³). */
  void begin(double[] before) {
    System.arraycopy(before, 0, volumes, 0, volumes.length);
    for (double[] direction : moved) {
      Arrays.fill(direction, 0);
    }
  }

  /** Adds the water of a step (m³ over each account). */
  void add(double[] water) {
    for (int a = 0; a < water.length; a++) {
      moved[water[a] > 0 ? 0 : 1][a] += Math.abs(water[a]);
    }
  }

  /** Whether any of its water comes from outside with another salinity than this (g/kg). */
  boolean bringsOtherThan(double salinity) {
    for (int a = 0; a < ends.from.length; a++) {
      if ((moved[0][a] > 0 && isOther(ends.from[a], salinity))
          || (moved[1][a] > 0 && isOther(ends.to[a], salinity))) {
        return true;
      }
    }
    return false;
  }

  private boolean isOther(int place, double salinity) {
    return !ends.pool[place] && Math.abs(outside[place] - salinity) > SAME;
  }

  /** Whether any of the water that was carried came to or from a place that has its own. */
  boolean touches(int place) {
    return touched[place];
  }

  /** Salinity of such a place at the end (g/kg). */
  double salinity(int place) {
    return solved[place];
  }

  /** Carries all water at one salinity (g/kg). */
  void carryAlike(double salinity) {
    findActive();
    double[][] masses = new double[2][count];
    for (int i = 0; i < count; i++) {
      masses[0][i] = moved[0][active[i]] * salinity;
      masses[1][i] = moved[1][active[i]] * salinity;
    }
    book(masses);
    moveWater(volumes, 1);
    Arrays.fill(solved, salinity);
  }

  /**
   * Carries the salt of places that differ.
   *
   * @param greatestSalinity that any of it has (g/kg)
   */
  void carry(double greatestSalinity) {
    greatest = greatestSalinity;
    findActive();
    takePart(1);
  }

  private void findActive() {
    count = 0;
    Arrays.fill(touched, false);
    for (int a = 0; a < ends.from.length; a++) {
      if (moved[0][a] > 0 || moved[1][a] > 0) {
        active[count++] = a;
        touched[ends.from[a]] = ends.pool[ends.from[a]];
        touched[ends.to[a]] = ends.pool[ends.to[a]];
      }
    }
  }

  /**
   * Takes a share of the batch once whole and once in halves; their errors cancel. Where they
   * differ too much, each half is taken by itself.
   */
  private void takePart(double share) {
    double[][] whole = masses(salt, volumes, share);
    double[][] first = masses(salt, volumes, share / 2);
    double[] saltBetween = salt.clone();
    double[] volumesBetween = volumes.clone();
    transfer(saltBetween, first);
    moveWater(volumesBetween, share / 2);
    double[][] second = masses(saltBetween, volumesBetween, share / 2);
    transfer(saltBetween, second);
    if (share > SMALLEST_SHARE && difference(whole, saltBetween) > ALLOWED) {
      takePart(share / 2);
      takePart(share / 2);
      return;
    }
    for (int direction = 0; direction < 2; direction++) {
      for (int i = 0; i < count; i++) {
        whole[direction][i] =
            2 * (first[direction][i] + second[direction][i]) - whole[direction][i];
      }
    }
    moveWater(volumes, share);
    int sweeps = 0;
    while (sweeps < MOST_SWEEPS && keepWithinMixture(whole)) {
      sweeps++;
    }
    book(whole);
  }

  /**
   * Where almost all of a place's water was exchanged, what cancels the errors may leave it with
   * less salt than none, or with more than the saltiest water would bring: what leaves it then
   * carries that much less, or more. Returns whether any did; it may be the next place's turn.
   */
  private boolean keepWithinMixture(double[][] masses) {
    double[] leftWith = salt.clone();
    transfer(leftWith, masses);
    Arrays.fill(leaving, 0);
    for (int i = 0; i < count; i++) {
      leaving[ends.from[active[i]]] += masses[0][i];
      leaving[ends.to[active[i]]] += masses[1][i];
    }
    boolean any = false;
    for (int place = 0; place < keeps.length; place++) {
      keeps[place] = touched[place] ? keeps(place, leftWith[place]) : 1;
      any |= keeps[place] != 1;
    }
    for (int i = 0; i < count; i++) {
      masses[0][i] *= keeps[ends.from[active[i]]];
      masses[1][i] *= keeps[ends.to[active[i]]];
    }
    return any;
  }

  /** Share of what leaves a place that may leave it, if it would be left with so much salt. */
  private double keeps(int place, double leftWith) {
    double most = greatest * Math.max(volumes[place], 0);
    double lacks = Math.clamp(leftWith, 0, most) - leftWith;
    boolean off = Math.abs(lacks) > SAME * Math.max(volumes[place], LITTLE);
    return off && leaving[place] > 0 ? Math.max(1 - lacks / leaving[place], 0) : 1;
  }

  /** Largest difference of a salinity, as a share of the greatest there is. */
  private double difference(double[][] whole, double[] saltInHalves) {
    double[] saltWhole = salt.clone();
    transfer(saltWhole, whole);
    double most = 0;
    for (int place = 0; place < saltWhole.length; place++) {
      if (touched[place]) {
        double apart = Math.abs(saltWhole[place] - saltInHalves[place]);
        most = Math.max(most, apart / (Math.max(volumes[place], LITTLE) * greatest));
      }
    }
    return most;
  }

  private void book(double[][] masses) {
    transfer(salt, masses);
    for (int direction = 0; direction < 2; direction++) {
      for (int i = 0; i < count; i++) {
        carried[direction][active[i]] += masses[direction][i];
      }
    }
  }

  /** Moves salt over the active accounts, forwards and backwards, from place to place. */
  private void transfer(double[] amounts, double[][] masses) {
    for (int i = 0; i < count; i++) {
      double net = masses[0][i] - masses[1][i];
      amounts[ends.from[active[i]]] -= net;
      amounts[ends.to[active[i]]] += net;
    }
  }

  /** Moves a share of the batch's water. */
  private void moveWater(double[] amounts, double share) {
    for (int i = 0; i < count; i++) {
      int a = active[i];
      double net = (moved[0][a] - moved[1][a]) * share;
      amounts[ends.from[a]] -= net;
      amounts[ends.to[a]] += net;
    }
  }

  /** Salt that a share of the batch carries, by direction and active account: an implicit step. */
  private double[][] masses(double[] saltBefore, double[] volumesBefore, double share) {
    double[] volumesAfter = volumesBefore.clone();
    moveWater(volumesAfter, share);
    matrix.clear();
    for (int place = 0; place < solved.length; place++) {
      double volume = Math.max(volumesAfter[place], 0) + LEAST_VOLUME;
      matrix.add(place, place, touched[place] ? volume : 1);
      solved[place] = touched[place] ? saltBefore[place] : outside[place];
    }
    for (int i = 0; i < count; i++) {
      int a = active[i];
      enter(ends.from[a], ends.to[a], moved[0][a] * share);
      enter(ends.to[a], ends.from[a], moved[1][a] * share);
    }
    matrix.factor();
    matrix.solve(solved);
    double[][] masses = new double[2][count];
    for (int i = 0; i < count; i++) {
      int a = active[i];
      masses[0][i] = moved[0][a] * share * solved[ends.from[a]];
      masses[1][i] = moved[1][a] * share * solved[ends.to[a]];
    }
    return masses;
  }

  private void enter(int source, int target, double water) {
    if (water <= 0) {
      return;
    }
    if (touched[source]) {
      matrix.add(source, source, water);
    }
    if (touched[target]) {
      if (touched[source]) {
        matrix.add(target, source, -water);
      } else {
        solved[target] += water * outside[source];
      }
    }
  }
}
