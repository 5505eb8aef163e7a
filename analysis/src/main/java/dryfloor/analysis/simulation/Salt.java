package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.Succession;
import dryfloor.model.element.Supply;
import java.util.Arrays;

/**
 * Salt carried along: every place is well mixed, and what leaves it has its salinity.
 *
 * <p>Water does not feel its salt, so the salt follows in batches of steps ({@link SaltBatch}):
 * once enough water has been exchanged between places of different salinity, and before a place
 * that mixes has filled or emptied. Salt is counted as salinity times volume; the density is that
 * of the whole installation.
 */
final class Salt {

  /** Share of a place's water that may be exchanged in a batch. */
  private static final double EXCHANGE = 0.04;

  /** Share exchanged times share by which the volume changed, up to which a batch may go on. */
  private static final double UNEVEN = 1e-4;

  /** A place with less water than this has no salinity of its own (m³). */
  private static final double NO_WATER = 1e-9;

  private final AccountEnds ends;
  private final double[] salt;

  /** Salinities of the outside (g/kg). */
  private final double[] outside;

  /** Salt over each account since the beginning, forwards and backwards (g/kg · m³). */
  final double[][] carried;

  private final SaltBatch batch;
  private boolean begun;

  /**
   * Salinities when the batch began (g/kg). A full junction has no water of its own; it has the
   * salinity of what passed it last.
   */
  private final double[] salinities;

  /** The greatest of all water and of what comes from outside (g/kg). */
  private double greatest;

  /** Water of another salinity that each place got in the batch, and gets in the step (m³). */
  private final double[] exchanged;

  private final double[] mixed;

  /**
   * Carries the salt of these places.
   *
   * @param salt of all places (g/kg · m³), changed in place
   */
  Salt(FlowNetwork network, double[] salt) {
    this.salt = salt;
    int places = network.places().size();
    ends = new AccountEnds(network);
    outside = outsideSalinities(network);
    carried = new double[2][network.accounts().size()];
    batch = new SaltBatch(ends, outside, salt, carried);
    salinities = new double[places];
    exchanged = new double[places];
    mixed = new double[places];
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
    batch.add(water);
    double most = 0;
    for (int place = 0; place < mixed.length; place++) {
      exchanged[place] += mixed[place];
      most = Math.max(most, exchanged[place] / atLeastLittle(batch.volumes[place]));
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
        if (contrast > SaltBatch.SAME && ends.pool[target]) {
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
        double least = atLeastLittle(Math.min(batch.volumes[place], now[place]));
        if (mixes * Math.abs(now[place] - batch.volumes[place]) > UNEVEN * least * least) {
          return true;
        }
      }
    }
    return false;
  }

  private static double atLeastLittle(double volume) {
    return Math.max(volume, SaltBatch.LITTLE);
  }

  private void begin(double[] before) {
    begun = true;
    batch.begin(before);
    Arrays.fill(exchanged, 0);
    greatest = SaltBatch.SAME;
    for (int place = 0; place < salinities.length; place++) {
      if (!ends.pool[place]) {
        salinities[place] = outside[place];
      } else if (holdsWater(place)) {
        salinities[place] = salt[place] / batch.volumes[place];
      } else {
        continue;
      }
      greatest = Math.max(greatest, salinities[place]);
    }
  }

  private boolean holdsWater(int place) {
    return ends.pool[place] && batch.volumes[place] > NO_WATER;
  }

  /** Carries the salt of all the water taken up so far. */
  void finish() {
    if (!begun) {
      return;
    }
    begun = false;
    if (isUniform()) {
      batch.carryAlike(greatest);
    } else {
      batch.carry(greatest);
    }
    for (int place = 0; place < salinities.length; place++) {
      if (batch.touches(place) && !holdsWater(place)) {
        salinities[place] = batch.salinity(place);
      }
    }
  }

  /** Whether all water that has salt, and all that moved, is of one salinity. */
  private boolean isUniform() {
    for (int place = 0; place < salinities.length; place++) {
      if (holdsWater(place) && Math.abs(salinities[place] - greatest) > SaltBatch.SAME) {
        return false;
      }
    }
    return !batch.bringsOtherThan(greatest);
  }
}
