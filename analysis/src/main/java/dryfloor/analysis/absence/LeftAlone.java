package dryfloor.analysis.absence;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.HowBad;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One failure at the beginning of an absence. */
public sealed interface LeftAlone {

  Failure failure();

  /**
   * Known for every length of absence.
   *
   * @param onFloors water that has reached floors or left the drawing by the end of each absence
   *     (m³), shortest first
   * @param howBad it is by the end of each absence, as the list of failures has it
   * @param firstWet when the first floor gets wet within the longest one (s)
   * @param guards what acted by itself, if anything did
   */
  record Known(
      Failure failure,
      List<Double> onFloors,
      List<HowBad> howBad,
      OptionalDouble firstWet,
      Optional<GuardsAtWork> guards)
      implements LeftAlone {

    public Known {
      onFloors = List.copyOf(onFloors);
      howBad = List.copyOf(howBad);
    }

    /** Whether a floor is wet by the end of an absence. */
    public boolean isWetBy(double time) {
      return firstWet.isPresent() && firstWet.getAsDouble() <= time;
    }
  }

  /** No answer for one of the absences, and why; never counted as dry. */
  record Unknown(Failure failure, String reason) implements LeftAlone {}
}
