package dryfloor.model.element;

import java.util.List;

/**
 * Something that switches powered parts. A part runs while it has power, nothing stops it, and at
 * least one of the controls that call for it does so (or none exists).
 */
public sealed interface Control extends Element {

  /** Ids of the pumps, circulation pumps and powered valves that it switches. */
  List<String> drives();

  /**
   * A level switch with hysteresis.
   *
   * @param vessel id of the vessel or floor whose level it feels
   * @param lower elevation of the lower switching level (m)
   * @param upper elevation of the upper switching level (m)
   */
  record LevelSwitch(
      String id,
      String name,
      String vessel,
      double lower,
      double upper,
      Action action,
      List<String> drives)
      implements Control {

    public LevelSwitch {
      drives = List.copyOf(drives);
    }

    /** What the switch does with its parts. */
    public enum Action {
      /** Runs them from the lower level until the upper one is reached. */
      FILLS,
      /** Runs them from the upper level until the lower one is reached. */
      EMPTIES,
      /** Stops them from the upper level until the lower one is reached. */
      STOPS_WHEN_HIGH,
      /** Stops them from the lower level until the upper one is reached. */
      STOPS_WHEN_LOW,
      /** Stops them at the upper level until a person resets it. */
      LOCKS_OUT_WHEN_HIGH,
      /** Stops them at the lower level until a person resets it. */
      LOCKS_OUT_WHEN_LOW;

      /** Whether it stays as it is once it has acted, whatever the water does. */
      public boolean locksOut() {
        return switch (this) {
          case FILLS, EMPTIES, STOPS_WHEN_HIGH, STOPS_WHEN_LOW -> false;
          case LOCKS_OUT_WHEN_HIGH, LOCKS_OUT_WHEN_LOW -> true;
        };
      }
    }
  }

  /**
   * Stops its parts for good once water stands where none should.
   *
   * @param in id of the basin or floor it lies in
   * @param depth of water that trips it (m)
   * @param delay before it acts (s)
   */
  record LeakSensor(
      String id, String name, String in, double depth, double delay, List<String> drives)
      implements Control {

    public LeakSensor {
      drives = List.copyOf(drives);
    }
  }

  /**
   * Stops its parts when they have been called for this long without a break.
   *
   * @param longestRun time (s)
   */
  record Timer(String id, String name, double longestRun, List<String> drives) implements Control {

    public Timer {
      drives = List.copyOf(drives);
    }
  }

  /**
   * A switch that a person must remember.
   *
   * @param on whether it is on in normal operation
   */
  record HandSwitch(String id, String name, boolean on, List<String> drives) implements Control {

    public HandSwitch {
      drives = List.copyOf(drives);
    }
  }
}
