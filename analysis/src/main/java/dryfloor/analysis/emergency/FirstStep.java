package dryfloor.analysis.emergency;

import java.util.List;

/** One thing to do, by ids of the drawing. */
public sealed interface FirstStep {

  /** Shut what comes from outside. */
  record ShutSupply(String supply) implements FirstStep {}

  /**
   * Switch off, at the breaker, what goes on feeding the leak.
   *
   * @param parts pumps of that circuit which do
   */
  record SwitchOff(String circuit, List<String> parts) implements FirstStep {
    public SwitchOff {
      parts = List.copyOf(parts);
    }
  }

  /** Shut a hand valve in a run. */
  record ShutValve(String valve, String run) implements FirstStep {}

  /** Let air into a run through which water comes back by itself. */
  record LetAirIn(String run) implements FirstStep {}
}
