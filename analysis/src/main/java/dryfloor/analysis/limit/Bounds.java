package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What no failure may do within a limit: no floor may get wet, that is always asked, and where the
 * user asks for it, no vessel that animals live in may lose its water or change its salinity.
 *
 * @param keeps share of the water it has in normal operation with which such a vessel must end
 * @param salinity within which one must end that is within it in normal operation
 */
public record Bounds(OptionalDouble keeps, Optional<Salinities> salinity) {

  /** Nothing is asked but that floors stay dry. */
  public static final Bounds DRY_FLOORS = new Bounds(OptionalDouble.empty(), Optional.empty());

  /**
   * A band of salinities.
   *
   * @param least (g/kg)
   * @param most (g/kg), above the least
   */
  public record Salinities(double least, double most) {

    /** Refuses a band with nothing in it. */
    public Salinities {
      if (!(least < most)) {
        throw new IllegalArgumentException(
            "there is no salinity from " + least + " to " + most + " g/kg; the first must be less");
      }
    }

    private boolean holds(double salinity) {
      return least <= salinity && salinity <= most;
    }
  }

  /** What a failure does that it may not, if anything; the wet floor first. */
  Optional<Decider> brokenBy(Failure failure, Outcome outcome, Installation drawing) {
    if (outcome.verdict() == Verdict.WET) {
      return Optional.of(new Decider.FloorWet(failure));
    }
    return outcome.vessels().stream()
        .filter(vessel -> drawing.vessels().stream().anyMatch(drawn -> isLivedIn(drawn, vessel)))
        .flatMap(vessel -> Stream.of(lost(failure, vessel), salted(failure, vessel)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Decider> lost(Failure failure, Outcome.VesselOutcome vessel) {
    double share = vessel.volumeBefore() > 0 ? vessel.volumeAfter() / vessel.volumeBefore() : 1;
    return keeps.isPresent() && share < keeps.getAsDouble()
        ? Optional.of(new Decider.WaterLost(failure, vessel.id(), share))
        : Optional.empty();
  }

  private Optional<Decider> salted(Failure failure, Outcome.VesselOutcome vessel) {
    return salinity
        .filter(band -> band.holds(vessel.salinityBefore()) && !band.holds(vessel.salinityAfter()))
        .map(band -> new Decider.SalinityOut(failure, vessel.id(), vessel.salinityAfter()));
  }

  private static boolean isLivedIn(Vessel drawn, Outcome.VesselOutcome vessel) {
    return drawn.id().equals(vessel.id()) && isLivedIn(drawn);
  }

  /** Whether animals live in a vessel, so that more than dry floors can be asked of it. */
  public static boolean isLivedIn(Vessel vessel) {
    return switch (vessel.role()) {
      case DISPLAY, QUARANTINE, REFUGIUM, RACEWAY -> true;
      case OVERFLOW_BOX, SUMP, RESERVOIR, MIXING_VAT, SKIMMER_BODY, HEADER, BASIN -> false;
    };
  }
}
