package dryfloor.analysis.band;

import dryfloor.analysis.failure.Failure;
import java.util.List;
import java.util.Optional;

/**
 * How bad and how good one failure can be.
 *
 * @param drawn with every value as drawn
 * @param worst the worst that was found, and where
 * @param best the best that was found, and where
 * @param onFloors water on floors (m³) wherever there is an answer
 * @param margin least freeboard (m) wherever there is an answer
 * @param swings what each uncertain value does alone, the most first
 * @param inDoubt siphon breaks that somewhere may or may not work; the worse course is told there
 */
public record Band(
    Failure failure,
    Figures drawn,
    Reached worst,
    Reached best,
    Range onFloors,
    Range margin,
    List<Swing> swings,
    List<String> inDoubt) {

  public Band {
    swings = List.copyOf(swings);
    inDoubt = List.copyOf(inDoubt);
  }

  /** What was found at a point. */
  public record Reached(Point point, Figures figures) {}

  /** Whether it hangs on what is not known whether a floor gets wet. */
  public boolean isOpen() {
    return worst.figures().isDry() != best.figures().isDry();
  }

  /** The value that matters most, if any does alone. */
  public Optional<Swing> most() {
    return swings.stream().findFirst().filter(Swing::matters);
  }
}
