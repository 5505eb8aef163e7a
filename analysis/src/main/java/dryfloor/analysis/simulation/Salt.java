package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.model.element.Supply;
import java.util.Arrays;

/**
 * Salt carried along: every place is well mixed, and what leaves it has its salinity.
 *
 * <p>Salinities at the end of a step follow from the water moved in it, implicitly, so that a small
 * chamber through which much water passes takes the salinity of what enters it. Each account gives
 * to one place what it takes from the other, so salt is kept to rounding. Salt is counted as
 * salinity times volume; the density is that of the whole installation.
 */
final class Salt {

  /** Salinities that differ by less are the same (g/kg). */
  private static final double SAME = 1e-9;

  /** Share of a place's water that may be exchanged in one part of a step. */
  private static final double EXCHANGE = 0.005;

  /** Places with less water than this take the salinity of what enters them (m³). */
  private static final double LITTLE = 0.005;

  private static final int MOST_PARTS = 2000;

  private final FlowNetwork network;
  private final double[] outside;
  private final double[] salinity;
  private final double[][] matrix;

  /** Salt over each account since the beginning, forwards and backwards (g/kg · m³). */
  final double[][] carried;

  Salt(FlowNetwork network) {
    this.network = network;
    int places = network.places().size();
    outside = new double[places];
    salinity = new double[places];
    matrix = new double[places][places];
    carried = new double[2][network.accounts().size()];
    for (Supply supply : network.installation().supplies()) {
      for (int place = 0; place < places; place++) {
        Place what = network.places().get(place);
        if (what.kind() == Place.Kind.SUPPLY && what.id().equals(supply.id())) {
          outside[place] = supply.salinity();
        }
      }
    }
  }

  /**
   * Carries salt with the water of a step.
   *
   * @param salt of all places, changed in place
   * @param before volumes at the beginning of the step (m³)
   * @param moved water over each account (m³)
   */
  void carry(double[] salt, double[] before, double[] moved) {
    double uniform = uniformSalinity(salt, before, moved);
    if (!Double.isNaN(uniform)) {
      Arrays.fill(salinity, uniform);
      move(salt, moved, 1);
      return;
    }
    int parts = parts(salt, before, moved);
    double[] volumes = before.clone();
    for (int part = 0; part < parts; part++) {
      for (int a = 0; a < moved.length; a++) {
        Account account = network.accounts().get(a);
        volumes[account.from()] -= moved[a] / parts;
        volumes[account.to()] += moved[a] / parts;
      }
      mix(salt, volumes, moved, parts);
      move(salt, moved, parts);
    }
  }

  /**
   * Mixes what circulates at unchanged volumes, without taking it down: the water that carries it
   * is counted up to the end only.
   */
  void mixOn(double[] salt, double[] volumes, double[] moved) {
    if (Double.isNaN(uniformSalinity(salt, volumes, moved))) {
      mix(salt, volumes, moved, 1);
      for (int place = 0; place < volumes.length; place++) {
        if (isPool(place)) {
          salt[place] = salinity[place] * (Math.max(volumes[place], 0) + 1e-12);
        }
      }
      exchangeWithOutside(salt, moved);
    }
  }

  /** What the pools gave to the outside and got from it, so that no salt is lost. */
  private void exchangeWithOutside(double[] salt, double[] moved) {
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      int source = moved[a] >= 0 ? account.from() : account.to();
      double mass = moved[a] * salinity[source];
      if (!isPool(account.from())) {
        salt[account.from()] -= mass;
      }
      if (!isPool(account.to())) {
        salt[account.to()] += mass;
      }
    }
  }

  /**
   * How many parts a step is cut into: so many that in none a place gets more than a small share of
   * its water from a place whose salinity is another. What circulates at one salinity cuts nothing.
   */
  private int parts(double[] salt, double[] before, double[] moved) {
    double[] exchanged = new double[before.length];
    double greatest = 0;
    for (int place = 0; place < before.length; place++) {
      greatest = Math.max(greatest, salinityOf(place, salt, before));
    }
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      int source = moved[a] >= 0 ? account.from() : account.to();
      int target = moved[a] >= 0 ? account.to() : account.from();
      double contrast =
          Math.abs(salinityOf(source, salt, before) - salinityOf(target, salt, before));
      exchanged[target] += Math.abs(moved[a]) * contrast / Math.max(greatest, SAME);
    }
    double most = 0;
    for (int place = 0; place < before.length; place++) {
      if (isPool(place) && before[place] > LITTLE) {
        most = Math.max(most, exchanged[place] / before[place]);
      }
    }
    return (int) Math.clamp(Math.ceil(most / EXCHANGE), 1, MOST_PARTS);
  }

  private double salinityOf(int place, double[] salt, double[] volumes) {
    if (!isPool(place)) {
      return outside[place];
    }
    return volumes[place] > 1e-9 ? salt[place] / volumes[place] : 0;
  }

  private boolean isPool(int place) {
    return network.places().get(place).kind().isPool();
  }

  /** The one salinity of all water that can move, or NaN where there are several. */
  private double uniformSalinity(double[] salt, double[] volumes, double[] moved) {
    double found = Double.NaN;
    for (int place = 0; place < volumes.length; place++) {
      if (isPool(place) && volumes[place] > 1e-9) {
        double here = salt[place] / volumes[place];
        if (!Double.isNaN(found) && Math.abs(here - found) > SAME) {
          return Double.NaN;
        }
        found = Double.isNaN(found) ? here : found;
      }
    }
    for (int a = 0; a < moved.length; a++) {
      int source =
          moved[a] >= 0 ? network.accounts().get(a).from() : network.accounts().get(a).to();
      if (moved[a] != 0 && !isPool(source) && Math.abs(outside[source] - found) > SAME) {
        return Double.NaN;
      }
    }
    return found;
  }

  /** Solves for the salinities at the end of a part of the step. */
  private void mix(double[] salt, double[] volumes, double[] moved, int parts) {
    int places = volumes.length;
    for (int place = 0; place < places; place++) {
      Arrays.fill(matrix[place], 0);
      boolean pool = isPool(place);
      matrix[place][place] = pool ? Math.max(volumes[place], 0) + 1e-12 : 1;
      salinity[place] = pool ? salt[place] : outside[place];
    }
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      int source = moved[a] >= 0 ? account.from() : account.to();
      int target = moved[a] >= 0 ? account.to() : account.from();
      double water = Math.abs(moved[a]) / parts;
      if (isPool(source)) {
        matrix[source][source] += water;
      }
      if (isPool(target)) {
        matrix[target][source] -= water;
      }
    }
    Dense.solve(matrix, salinity);
  }

  private void move(double[] salt, double[] moved, int parts) {
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      int source = moved[a] >= 0 ? account.from() : account.to();
      double mass = moved[a] / parts * salinity[source];
      salt[account.from()] -= mass;
      salt[account.to()] += mass;
      carried[moved[a] >= 0 ? 0 : 1][a] += Math.abs(mass);
    }
  }
}
