package dryfloor.analysis.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer for one failure (or for normal operation). Times are seconds after the failure,
 * volumes m³, levels metres of elevation, salinities g/kg.
 *
 * @param verdict where the water went
 * @param ending how it came to an end
 * @param margin the least freeboard left
 * @param vessels every vessel and basin, in the order of the drawing
 * @param floors every floor, in the order of the drawing
 * @param beyond water that left the drawing over a last sill; counted as wet
 * @param drained water that each drain took in all
 * @param supplied water that each supply gave in all
 * @param firstSpill when water first left a vessel for a place where it should not be
 * @param firstWetFloor when a floor first got water
 * @param dryPumps pumps that sucked air, and when first
 * @param ledger every way that water took, up to the end
 * @param story what happened, in order, each cause before its effect
 * @param notes doubts and limits that the reader must know
 * @param trajectory levels over time
 */
public record Outcome(
    Verdict verdict,
    Ending ending,
    Margin margin,
    List<VesselOutcome> vessels,
    List<FloorOutcome> floors,
    double beyond,
    List<Passed> drained,
    List<Passed> supplied,
    OptionalDouble firstSpill,
    OptionalDouble firstWetFloor,
    List<DryPump> dryPumps,
    Ledger ledger,
    List<StoryEvent> story,
    List<Note> notes,
    Trajectory trajectory) {

  public Outcome {
    vessels = List.copyOf(vessels);
    floors = List.copyOf(floors);
    drained = List.copyOf(drained);
    supplied = List.copyOf(supplied);
    dryPumps = List.copyOf(dryPumps);
    story = List.copyOf(CauseFirst.of(story));
    notes = List.copyOf(notes);
  }

  /** The same with more notes. */
  public Outcome with(List<Note> more) {
    List<Note> all = new ArrayList<>(notes);
    all.addAll(more);
    return new Outcome(
        verdict,
        ending,
        margin,
        vessels,
        floors,
        beyond,
        drained,
        supplied,
        firstSpill,
        firstWetFloor,
        dryPumps,
        ledger,
        story,
        all,
        trajectory);
  }

  /**
   * The least freeboard left.
   *
   * @param vessel id of the vessel that came closest to its rim, the first by id where several did;
   *     none where no vessel holds water
   * @param freeboard rim minus highest level (m); negative where it spilled
   * @param time of the highest level
   */
  public record Margin(Optional<String> vessel, double freeboard, double time) {}

  /**
   * A vessel or basin before and after.
   *
   * @param id of the vessel
   * @param levelBefore level in normal operation
   * @param levelAfter final level
   * @param rim elevation of its rim
   * @param bottom elevation of its inside bottom
   * @param volumeBefore water in normal operation
   * @param volumeAfter final water
   * @param highestLevel of the whole run
   * @param highestTime when that was
   * @param salinityBefore in normal operation; 0 for a dry vessel
   * @param salinityAfter final
   * @param spilled water that went over its rim or leaked out of it
   */
  public record VesselOutcome(
      String id,
      double levelBefore,
      double levelAfter,
      double rim,
      double bottom,
      double volumeBefore,
      double volumeAfter,
      double highestLevel,
      double highestTime,
      double salinityBefore,
      double salinityAfter,
      double spilled) {}

  /**
   * A floor at the end.
   *
   * @param volume that stands on it
   * @param depth at which it stands (m)
   * @param received water that reached it in all, drained or spilled on since
   * @param firstWet when it first got water
   */
  public record FloorOutcome(
      String id, double volume, double depth, double received, OptionalDouble firstWet) {}

  /** Water that a drain or supply passed in all. */
  public record Passed(String id, double volume) {}

  /** A pump that sucked air. */
  public record DryPump(String pump, double time) {}

  /** Water on all floors and beyond the drawing (m³). */
  public double onFloors() {
    return beyond + floors.stream().mapToDouble(FloorOutcome::volume).sum();
  }

  /** Water that reached floors from anywhere but another floor, whatever became of it (m³). */
  public double reachedFloors() {
    double passedOn =
        ledger.entries().stream()
            .filter(entry -> entry.way() == Ledger.Way.SILL && isFloor(entry.to()))
            .mapToDouble(Ledger.Entry::volume)
            .sum();
    return floors.stream().mapToDouble(FloorOutcome::received).sum() - passedOn;
  }

  private boolean isFloor(String id) {
    return floors.stream().anyMatch(floor -> floor.id().equals(id));
  }
}
