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

  /** A step is cut so that no more than this share of all water is exchanged with the outside. */
  private static final double EXCHANGE = 0.002;

  private static final int MOST_PARTS = 400;

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
    int parts = parts(before, moved);
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
    }
  }

  private int parts(double[] before, double[] moved) {
    double all = 0;
    double exchanged = 0;
    for (int place = 0; place < before.length; place++) {
      all += isPool(place) ? Math.max(before[place], 0) : 0;
    }
    for (int a = 0; a < moved.length; a++) {
      Account account = network.accounts().get(a);
      if (isPool(account.from()) != isPool(account.to())) {
        exchanged += Math.abs(moved[a]);
      }
    }
    return (int) Math.clamp(Math.ceil(exchanged / (EXCHANGE * Math.max(all, 1e-6))), 1, MOST_PARTS);
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
