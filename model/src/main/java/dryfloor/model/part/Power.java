package dryfloor.model.part;

/**
 * How a powered part is fed and what it does when the power comes back.
 *
 * @param circuit id of the circuit that feeds it
 * @param onReturn what it does when the circuit comes back
 * @param delay time between the return of power and the restart (s), 0 for at once
 */
public record Power(String circuit, OnReturn onReturn, double delay) {

  /** What a powered part does when its circuit comes back. */
  public enum OnReturn {
    RESTARTS,
    STAYS_OFF
  }
}
