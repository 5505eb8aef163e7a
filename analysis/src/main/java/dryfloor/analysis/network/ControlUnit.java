package dryfloor.analysis.network;

import dryfloor.model.element.Control;
import java.util.List;

/**
 * A control and what it is wired to.
 *
 * @param control as drawn, with its levels as the failure left them
 * @param place index of the place that it feels, or -1
 * @param parts indices of the powered parts that it drives
 * @param fault what is wrong with it
 */
public record ControlUnit(Control control, int place, List<Integer> parts, Fault fault) {

  /** What is wrong with a control. */
  public enum Fault {
    NONE,
    FEELS_LOW,
    FEELS_HIGH,
    DEAD,
    TRIPPED
  }

  public ControlUnit {
    parts = List.copyOf(parts);
  }
}
