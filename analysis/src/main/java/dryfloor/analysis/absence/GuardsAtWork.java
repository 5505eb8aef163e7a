package dryfloor.analysis.absence;

import java.util.List;
import java.util.OptionalDouble;

/** What the guards that acted after a failure are worth: the same again with all of them dead. */
public sealed interface GuardsAtWork {

  /** Ids of the controls that acted. */
  List<String> acted();

  /**
   * Both courses are known.
   *
   * @param with water on floors by the end of the longest absence, the guards working (m³)
   * @param without the same, the guards dead (m³)
   * @param firstWetWith when the first floor got wet, the guards working (s)
   * @param firstWetWithout the same, the guards dead (s)
   */
  record Compared(
      List<String> acted,
      double with,
      double without,
      OptionalDouble firstWetWith,
      OptionalDouble firstWetWithout)
      implements GuardsAtWork {

    /** Less than this is no difference (m³), nor is less than a hundredth of the water. */
    private static final double NOTHING = 1e-5;

    private static final double SHARE = 0.01;

    public Compared {
      acted = List.copyOf(acted);
    }

    /** Water that the guards keep off floors (m³); negative where they bring more. */
    public double saves() {
      return without - with;
    }

    /** What their acting comes to. */
    public Worth worth() {
      double least = Math.max(NOTHING, SHARE * Math.max(with, without));
      if (Math.abs(saves()) < least) {
        return Worth.NO_DIFFERENCE;
      }
      return saves() > 0 ? Worth.SAVES : Worth.MAKES_WORSE;
    }
  }

  /** Without the guards there is no answer, and why. */
  record NotKnown(List<String> acted, String reason) implements GuardsAtWork {

    public NotKnown {
      acted = List.copyOf(acted);
    }
  }

  /** What acting comes to, in water on floors. */
  enum Worth {
    SAVES,
    NO_DIFFERENCE,
    MAKES_WORSE
  }
}
