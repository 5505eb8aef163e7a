package dryfloor.analysis.simulation;

import java.util.Arrays;

/**
 * How flows answer to levels: a list of (account, place, slope), an account's slope by a place
 * being the sum of its entries. A place that is a full tee stands for the head there. It grows as
 * needed and is used again from step to step.
 */
final class Slopes {

  private int[] slots = new int[64];
  private int[] places = new int[64];
  private double[] values = new double[64];
  private int size;

  void clear() {
    size = 0;
  }

  /** Adds a slope (m²/s) of the flow of an account by the level of a place. */
  void add(int slot, int place, double value) {
    if (value == 0) {
      return;
    }
    if (size == slots.length) {
      slots = Arrays.copyOf(slots, 2 * size);
      places = Arrays.copyOf(places, 2 * size);
      values = Arrays.copyOf(values, 2 * size);
    }
    slots[size] = slot;
    places[size] = place;
    values[size] = value;
    size++;
  }

  int size() {
    return size;
  }

  int slot(int entry) {
    return slots[entry];
  }

  int place(int entry) {
    return places[entry];
  }

  double value(int entry) {
    return values[entry];
  }
}
