package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
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

  private final FlowNetwork network;
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
  private final int[] row;
  private final int[] placeOfRow;
  private final double[][] matrix;
  private final double[] solved;

  /**
   * Carries the salt of these places.
   *
   * @param salt of all places (g/kg · m³), changed in place
   */
  Salt(FlowNetwork network, double[] salt) {
    this.network = network;
    this.salt = salt;
    int places = network.places().size();
    int accounts = network.accounts().size();
    outside = outsideSalinities(network);
    carried = new double[2][accounts];
    moved = new double[2][accounts];
    volumes = new double[places];
    salinities = new double[places];
    exchanged = new double[places];
    row = new int[places];
    placeOfRow = new int[places];
    matrix = new double[places][places];
    solved = new double[places];
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
        Account account = network.accounts().get(a);
        int direction = water[a] > 0 ? 0 : 1;
        int source = direction == 0 ? account.from() : account.to();
        int target = direction == 0 ? account.to() : account.from();
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
    return network.places().get(place).kind().isPool();
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
      Account account = network.accounts().get(a);
      if (gives(account.from(), moved[0][a]) || gives(account.to(), moved[1][a])) {
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
    book(total);
    transfer(volumes, moved, share);
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
      amounts[network.accounts().get(a).from()] -= net;
      amounts[network.accounts().get(a).to()] += net;
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
    int size = rows();
    double[] after = volumesBefore.clone();
    transfer(after, moved, share);
    for (int r = 0; r < size; r++) {
      int place = placeOfRow[r];
      Arrays.fill(matrix[r], 0, size, 0);
      matrix[r][r] = Math.max(after[place], 0) + LEAST_VOLUME;
      solved[r] = saltBefore[place];
    }
    for (int a = 0; a < moved[0].length; a++) {
      Account account = network.accounts().get(a);
      enter(account.from(), account.to(), moved[0][a] * share);
      enter(account.to(), account.from(), moved[1][a] * share);
    }
    Dense.factor(matrix, size);
    Dense.substitute(matrix, solved, size);
    double[][] masses = new double[2][moved[0].length];
    for (int a = 0; a < moved[0].length; a++) {
      Account account = network.accounts().get(a);
      masses[0][a] = moved[0][a] * share * salinityAfter(account.from());
      masses[1][a] = moved[1][a] * share * salinityAfter(account.to());
    }
    return masses;
  }

  /** Gives a row of the matrix to each place with water of its own from or to which water moved. */
  private int rows() {
    Arrays.fill(row, -1);
    int size = 0;
    for (int a = 0; a < moved[0].length; a++) {
      if (moved[0][a] > 0 || moved[1][a] > 0) {
        size = addRow(network.accounts().get(a).from(), size);
        size = addRow(network.accounts().get(a).to(), size);
      }
    }
    return size;
  }

  private int addRow(int place, int size) {
    if (row[place] >= 0 || !isPool(place)) {
      return size;
    }
    row[place] = size;
    placeOfRow[size] = place;
    return size + 1;
  }

  private void enter(int source, int target, double water) {
    if (water <= 0) {
      return;
    }
    if (row[source] >= 0) {
      matrix[row[source]][row[source]] += water;
    }
    if (row[target] >= 0) {
      if (row[source] >= 0) {
        matrix[row[target]][row[source]] -= water;
      } else {
        solved[row[target]] += water * outside[source];
      }
    }
  }

  private double salinityAfter(int place) {
    return row[place] >= 0 ? solved[row[place]] : outside[place];
  }
}
