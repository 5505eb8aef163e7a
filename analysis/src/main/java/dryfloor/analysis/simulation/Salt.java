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

  /** Share exchanged times share by which the volume changed, up to which a batch may go on. */
  private static final double UNEVEN = 1e-4;

  /** Places with less water than this take the salinity of what enters them (m³). */
  private static final double LITTLE = 0.001;

  /** A place with less water than this has no salinity of its own (m³). */
  private static final double NO_WATER = 1e-9;

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

  /** The accounts over which water moved in the batch, the first {@link #count} of these. */
  private final int[] active;

  private int count;

  /** The places with water of their own from or to which water moved in the batch. */
  private final boolean[] touched;

  private final double[] volumes;
  private final double[] salinities;

  /** Water of another salinity that each place got in the batch, and in the step (m³). */
  private final double[] exchanged;

  private final double[] mixed;
  private double greatest;
  private boolean begun;

  // Work space of the implicit step.
  private final AccountEnds ends;
  private final SparseMatrix matrix;
  private final double[] solved;
  private final double[] after;
  private final double[] leaving;
  private final double[] keeps;

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
    active = new int[accounts];
    volumes = new double[places];
    salinities = new double[places];
    exchanged = new double[places];
    mixed = new double[places];
    ends = new AccountEnds(network);
    touched = new boolean[places];
    matrix = new SparseMatrix(places);
    ends.announceTo(matrix);
    solved = new double[places];
    after = new double[places];
    leaving = new double[places];
    keeps = new double[places];
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
    if (begun) {
      mix(water);
      if (isUneven(before)) {
        finish();
      }
    }
    if (!begun) {
      begin(before);
      mix(water);
    }
    double most = 0;
    for (int place = 0; place < mixed.length; place++) {
      exchanged[place] += mixed[place];
      most = Math.max(most, exchanged[place] / Math.max(volumes[place], LITTLE));
    }
    for (int a = 0; a < water.length; a++) {
      moved[water[a] > 0 ? 0 : 1][a] += Math.abs(water[a]);
    }
    if (most > EXCHANGE) {
      finish();
    }
  }

  /** Works out what the water of a step brings to each place that has another salinity. */
  private void mix(double[] water) {
    Arrays.fill(mixed, 0);
    for (int a = 0; a < water.length; a++) {
      if (water[a] != 0) {
        int source = water[a] > 0 ? ends.from[a] : ends.to[a];
        int target = water[a] > 0 ? ends.to[a] : ends.from[a];
        double contrast = Math.abs(salinities[source] - salinities[target]);
        if (contrast > SAME && isPool(target)) {
          mixed[target] += Math.abs(water[a]) * contrast / greatest;
        }
      }
    }
  }

  /**
   * Whether a place that mixes has filled or emptied since the batch began: what comes to it now
   * must not be spread over the time when it was fuller or emptier.
   */
  private boolean isUneven(double[] now) {
    for (int place = 0; place < mixed.length; place++) {
      double mixes = exchanged[place] + mixed[place];
      if (mixes > 0) {
        double least = Math.max(Math.min(volumes[place], now[place]), LITTLE);
        if (mixes * Math.abs(now[place] - volumes[place]) > UNEVEN * least * least) {
          return true;
        }
      }
    }
    return false;
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
      if (!isPool(place)) {
        salinities[place] = outside[place];
      } else if (volumes[place] > NO_WATER) {
        salinities[place] = salt[place] / volumes[place];
      }
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
    findActive();
    if (isUniform()) {
      book(masses(greatest));
      return;
    }
    takePart(1);
  }

  private void findActive() {
    count = 0;
    Arrays.fill(touched, false);
    for (int a = 0; a < ends.from.length; a++) {
      if (moved[0][a] > 0 || moved[1][a] > 0) {
        active[count++] = a;
        touched[ends.from[a]] = isPool(ends.from[a]);
        touched[ends.to[a]] = isPool(ends.to[a]);
      }
    }
  }

  /** Whether all water that has salt, and all that moved, is of one salinity. */
  private boolean isUniform() {
    for (int place = 0; place < volumes.length; place++) {
      boolean holds = isPool(place) && volumes[place] > NO_WATER;
      if (holds && Math.abs(salinities[place] - greatest) > SAME) {
        return false;
      }
    }
    for (int i = 0; i < count; i++) {
      int a = active[i];
      if (gives(ends.from[a], moved[0][a]) || gives(ends.to[a], moved[1][a])) {
        return false;
      }
    }
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
    double[] after = salt.clone();
    transfer(after, masses);
    Arrays.fill(leaving, 0);
    for (int i = 0; i < count; i++) {
      leaving[ends.from[active[i]]] += masses[0][i];
      leaving[ends.to[active[i]]] += masses[1][i];
    }
    boolean any = false;
    for (int place = 0; place < after.length; place++) {
      keeps[place] = touched[place] ? keeps(place, after[place]) : 1;
      any |= keeps[place] != 1;
    }
    for (int i = 0; i < count; i++) {
      masses[0][i] *= keeps[ends.from[active[i]]];
      masses[1][i] *= keeps[ends.to[active[i]]];
    }
    return any;
  }

  /** Share of what leaves a place that may leave it, if it would be left with so much salt. */
  private double keeps(int place, double after) {
    double most = greatest * Math.max(volumes[place], 0);
    double lacks = Math.clamp(after, 0, most) - after;
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

  /** Salt that the whole batch carries at one salinity, by direction and active account. */
  private double[][] masses(double salinity) {
    double[][] masses = new double[2][count];
    for (int i = 0; i < count; i++) {
      masses[0][i] = moved[0][active[i]] * salinity;
      masses[1][i] = moved[1][active[i]] * salinity;
    }
    return masses;
  }

  /** Salt that a share of the batch carries, by direction and active account: an implicit step. */
  private double[][] masses(double[] saltBefore, double[] volumesBefore, double share) {
    System.arraycopy(volumesBefore, 0, after, 0, after.length);
    moveWater(after, share);
    matrix.clear();
    for (int place = 0; place < after.length; place++) {
      matrix.add(place, place, touched[place] ? Math.max(after[place], 0) + LEAST_VOLUME : 1);
      solved[place] = touched[place] ? saltBefore[place] : outside[place];
    }
    for (int i = 0; i < count; i++) {
      int a = active[i];
      enter(ends.from[a], ends.to[a], moved[0][a] * share);
      enter(ends.to[a], ends.from[a], moved[1][a] * share);
    }
    matrix.factor();
    matrix.solve(solved);
    keepSalinityOfPassing();
    double[][] masses = new double[2][count];
    for (int i = 0; i < count; i++) {
      int a = active[i];
      masses[0][i] = moved[0][a] * share * solved[ends.from[a]];
      masses[1][i] = moved[1][a] * share * solved[ends.to[a]];
    }
    return masses;
  }

  /** A full junction has no water of its own; it has the salinity of what passed it last. */
  private void keepSalinityOfPassing() {
    for (int place = 0; place < solved.length; place++) {
      if (touched[place] && after[place] <= NO_WATER) {
        salinities[place] = solved[place];
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
