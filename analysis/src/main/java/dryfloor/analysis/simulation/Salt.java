package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.Succession;
import dryfloor.model.element.Supply;
import java.util.Arrays;

/**
 * Salt carried along: every place is well mixed, and what leaves it has its salinity.
 *
 * <p>Water does not feel its salt, so the salt follows in batches of steps, once enough water has
 * been exchanged between places of different salinity. Salinities at the end of a batch follow
 * implicitly, so that a small chamber through which much water passes takes the salinity of what
 * enters it; taking a batch once whole and once in halves makes them exact to second order
 * (Richardson). Each account gives to one place what it takes from the other, so salt is kept to
 * rounding. Salt is counted as salinity times volume; the density is that of the whole
 * installation.
 */
final class Salt {

  /** Salinities that differ by less are the same (g/kg). */
  private static final double SAME = 1e-9;

  /** Share of a place's water that may be exchanged in a batch. */
  private static final double EXCHANGE = 0.04;

  /** Places with less water than this take the salinity of what enters them (m³). */
  private static final double LITTLE = 0.005;

  /** Keeps the matrix regular where a place is empty (m³). */
  private static final double LEAST_VOLUME = 1e-12;

  /** Difference of a salinity, whole against halves, up to which a part is good (share of it). */
  private static final double ALLOWED = 1e-4;

  private static final double SMALLEST_SHARE = 1.0 / 1024;

  /** What one place gives too much or too little is made good along no more places than this. */
  private static final int MOST_SWEEPS = 50;

  private final double[] salt;

  /** Salinities of the outside (g/kg). */
  private final double[] outside;

  /** Salt over each account since the beginning, forwards and backwards (g/kg · m³). */
  final double[][] carried;

  // The batch: water over each account forwards and backwards, and what there was when it began.
  private final double[][] moved;
  private final double[] volumes;
  private final double[] salinities;
  private final double[] exchanged;
  private double greatest;
  private boolean begun;

  // Work space of the implicit step.
  private final AccountEnds ends;
  private final boolean[] touched;
  private final SparseMatrix matrix;
  private final double[] solved;

  /**
   * Carries the salt of these places.
   *
   * @param salt of all places (g/kg · m³), changed in place
   */
  Salt(FlowNetwork network, double[] salt) {
    this.salt = salt;
    int places = network.places().size();
    int accounts = network.accounts().size();
    outside = outsideSalinities(network);
    carried = new double[2][accounts];
    moved = new double[2][accounts];
    volumes = new double[places];
    salinities = new double[places];
    exchanged = new double[places];
    ends = new AccountEnds(network);
    touched = new boolean[places];
    matrix = new SparseMatrix(places);
    ends.announceTo(matrix);
    solved = new double[places];
  }

  /** Goes on with the books of another, whose salt has been carried to the last of its water. */
  void goOn(Salt before, Succession succession) {
    for (int direction = 0; direction < 2; direction++) {
      succession.accounts(before.carried[direction], carried[direction]);
    }
  }

  /** Salinity of what comes from each supply (g/kg), by place. */
  static double[] outsideSalinities(FlowNetwork network) {
    double[] salinities = new double[network.places().size()];
    for (int place = 0; place < salinities.length; place++) {
      Place what = network.places().get(place);
      if (what.kind() == Place.Kind.SUPPLY) {
        salinities[place] =
            network.installation().supplies().stream()
                .filter(supply -> supply.id().equals(what.id()))
                .mapToDouble(Supply::salinity)
                .findFirst()
                .orElseThrow();
      }
    }
    return salinities;
  }

  /**
   * Takes up the water of a step.
   *
   * @param before volumes at the beginning of the step (m³)
   * @param water over each account in the step (m³)
   */
  void carry(double[] before, double[] water) {
    if (!begun) {
      begin(before);
    }
    double most = 0;
    for (int a = 0; a < water.length; a++) {
      if (water[a] != 0) {
        int direction = water[a] > 0 ? 0 : 1;
        int source = direction == 0 ? ends.from[a] : ends.to[a];
        int target = direction == 0 ? ends.to[a] : ends.from[a];
        moved[direction][a] += Math.abs(water[a]);
        double contrast = Math.abs(salinities[source] - salinities[target]);
        if (contrast > SAME && isPool(target)) {
          exchanged[target] += Math.abs(water[a]) * contrast / greatest;
          most = Math.max(most, exchanged[target] / Math.max(volumes[target], LITTLE));
        }
      }
    }
    if (most > EXCHANGE) {
      finish();
    }
  }

  private void begin(double[] before) {
    begun = true;
    greatest = SAME;
    System.arraycopy(before, 0, volumes, 0, volumes.length);
    Arrays.fill(exchanged, 0);
    for (double[] direction : moved) {
      Arrays.fill(direction, 0);
    }
    for (int place = 0; place < volumes.length; place++) {
      salinities[place] =
          !isPool(place)
              ? outside[place]
              : volumes[place] > 1e-9 ? salt[place] / volumes[place] : 0;
      greatest = Math.max(greatest, salinities[place]);
    }
  }

  private boolean isPool(int place) {
    return ends.pool[place];
  }

  /** Carries the salt of all the water taken up so far. */
  void finish() {
    if (!begun) {
      return;
    }
    begun = false;
    if (isUniform()) {
      book(masses(greatest));
      return;
    }
    takePart(1);
  }

  /** Whether all water that has salt, and all that moved, is of one salinity. */
  private boolean isUniform() {
    for (int place = 0; place < volumes.length; place++) {
      boolean holds = isPool(place) && volumes[place] > 1e-9;
      if (holds && Math.abs(salinities[place] - greatest) > SAME) {
        return false;
      }
    }
    for (int a = 0; a < moved[0].length; a++) {
      if (gives(ends.from[a], moved[0][a]) || gives(ends.to[a], moved[1][a])) {
        return false;
      }
    }
    Arrays.fill(salinities, greatest);
    return true;
  }

  private boolean gives(int place, double water) {
    return water > 0 && !isPool(place) && Math.abs(outside[place] - greatest) > SAME;
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
    transfer(saltBetween, first, 1);
    transfer(volumesBetween, moved, share / 2);
    double[][] second = masses(saltBetween, volumesBetween, share / 2);
    transfer(saltBetween, second, 1);
    if (share > SMALLEST_SHARE && difference(whole, saltBetween) > ALLOWED) {
      takePart(share / 2);
      takePart(share / 2);
      return;
    }
    double[][] total = new double[2][whole[0].length];
    for (int direction = 0; direction < 2; direction++) {
      for (int a = 0; a < total[direction].length; a++) {
        total[direction][a] =
            2 * (first[direction][a] + second[direction][a]) - whole[direction][a];
      }
    }
    transfer(volumes, moved, share);
    int sweeps = 0;
    while (sweeps < MOST_SWEEPS && keepWithinMixture(total)) {
      sweeps++;
    }
    book(total);
  }

  /**
   * Where almost all of a place's water was exchanged, what cancels the errors may leave it with
   * less salt than none, or with more than the saltiest water would bring: what leaves it then
   * carries that much less, or more. Returns whether any did; it may be the next place's turn.
   */
  private boolean keepWithinMixture(double[][] masses) {
    double[] after = salt.clone();
    transfer(after, masses, 1);
    double[] leaving = new double[after.length];
    for (int a = 0; a < ends.from.length; a++) {
      leaving[ends.from[a]] += masses[0][a];
      leaving[ends.to[a]] += masses[1][a];
    }
    double[] share = new double[after.length];
    boolean any = false;
    for (int place = 0; place < after.length; place++) {
      double most = greatest * Math.max(volumes[place], 0);
      double lacks = Math.clamp(after[place], 0, most) - after[place];
      boolean off = isPool(place) && Math.abs(lacks) > SAME * Math.max(volumes[place], LITTLE);
      share[place] = off && leaving[place] > 0 ? Math.max(1 - lacks / leaving[place], 0) : 1;
      any |= share[place] != 1;
    }
    for (int a = 0; a < ends.from.length; a++) {
      masses[0][a] *= share[ends.from[a]];
      masses[1][a] *= share[ends.to[a]];
    }
    return any;
  }

  /** Largest difference of a salinity, as a share of the greatest there is. */
  private double difference(double[][] whole, double[] saltInHalves) {
    double[] saltWhole = salt.clone();
    transfer(saltWhole, whole, 1);
    double most = 0;
    for (int place = 0; place < saltWhole.length; place++) {
      if (isPool(place)) {
        double apart = Math.abs(saltWhole[place] - saltInHalves[place]);
        most = Math.max(most, apart / (Math.max(volumes[place], LITTLE) * greatest));
      }
    }
    return most;
  }

  private void book(double[][] masses) {
    transfer(salt, masses, 1);
    for (int direction = 0; direction < 2; direction++) {
      for (int a = 0; a < masses[direction].length; a++) {
        carried[direction][a] += masses[direction][a];
      }
    }
  }

  /** Moves a share of amounts over the accounts, forwards and backwards, from place to place. */
  private void transfer(double[] amounts, double[][] over, double share) {
    for (int a = 0; a < over[0].length; a++) {
      double net = (over[0][a] - over[1][a]) * share;
      if (net != 0) {
        amounts[ends.from[a]] -= net;
        amounts[ends.to[a]] += net;
      }
    }
  }

  /** Salt that the whole batch carries at one salinity, by direction and account. */
  private double[][] masses(double salinity) {
    double[][] masses = {moved[0].clone(), moved[1].clone()};
    for (double[] direction : masses) {
      for (int a = 0; a < direction.length; a++) {
        direction[a] *= salinity;
      }
    }
    return masses;
  }

  /** Salt that a share of the batch carries, by direction and account: one implicit step. */
  private double[][] masses(double[] saltBefore, double[] volumesBefore, double share) {
    double[] after = volumesBefore.clone();
    transfer(after, moved, share);
    touch();
    matrix.clear();
    for (int place = 0; place < after.length; place++) {
      matrix.add(place, place, touched[place] ? Math.max(after[place], 0) + LEAST_VOLUME : 1);
      solved[place] = touched[place] ? saltBefore[place] : outside[place];
    }
    for (int a = 0; a < ends.from.length; a++) {
      enter(ends.from[a], ends.to[a], moved[0][a] * share);
      enter(ends.to[a], ends.from[a], moved[1][a] * share);
    }
    matrix.factor();
    matrix.solve(solved);
    double[][] masses = new double[2][ends.from.length];
    for (int a = 0; a < ends.from.length; a++) {
      masses[0][a] = moved[0][a] * share * solved[ends.from[a]];
      masses[1][a] = moved[1][a] * share * solved[ends.to[a]];
    }
    return masses;
  }

  /** Marks each place with water of its own from or to which water moved. */
  private void touch() {
    Arrays.fill(touched, false);
    for (int a = 0; a < ends.from.length; a++) {
      if (moved[0][a] > 0 || moved[1][a] > 0) {
        touched[ends.from[a]] = isPool(ends.from[a]);
        touched[ends.to[a]] = isPool(ends.to[a]);
      }
    }
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
