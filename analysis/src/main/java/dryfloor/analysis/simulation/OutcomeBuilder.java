package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts what was taken down into an {@link Outcome}. */
public final class OutcomeBuilder {

  private final Course course;
  private final FlowNetwork network;
  private final Recorder recorder;
  private final Map<String, Integer> placeOfElement = new HashMap<>();

  private OutcomeBuilder(Course course) {
    this.course = course;
    this.network = course.network();
    this.recorder = course.recorder;
    for (int place = 0; place < network.places().size(); place++) {
      Place what = network.places().get(place);
      switch (what.kind()) {
        case VESSEL, BASIN, FLOOR, SUPPLY, DRAIN, BEYOND, OUTSIDE ->
            placeOfElement.put(what.id(), place);
        case COLUMN, TEE, DEVICE -> {}
      }
    }
  }

  /**
   * The outcome of a course.
   *
   * @param notes that hold for it besides those that it brings itself
   */
  public static Outcome of(Course course, List<Note> notes) {
    return new OutcomeBuilder(course).build(notes);
  }

  private Outcome build(List<Note> notes) {
    List<Outcome.VesselOutcome> vessels =
        network.installation().vessels().stream().map(this::vessel).toList();
    List<Outcome.FloorOutcome> floors =
        network.installation().floors().stream().map(floor -> floor(floor.id())).toList();
    double beyond = course.state().volumes[place(Ledger.BEYOND)];
    return new Outcome(
        verdict(),
        course.ending(),
        margin(vessels),
        vessels,
        floors,
        beyond,
        network.installation().drains().stream()
            .map(drain -> new Outcome.Passed(drain.id(), gained(place(drain.id()))))
            .toList(),
        network.installation().supplies().stream()
            .map(supply -> new Outcome.Passed(supply.id(), -gained(place(supply.id()))))
            .toList(),
        firstSpill(),
        floors.stream()
            .map(Outcome.FloorOutcome::firstWet)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min(),
        dryPumps(),
        LedgerBuilder.of(course),
        StoryAmounts.story(course, this::place),
        allNotes(notes),
        TrajectoryBuilder.of(course));
  }

  private List<Note> allNotes(List<Note> given) {
    List<Note> all = new ArrayList<>(given);
    all.addAll(course.notes());
    return all;
  }

  private int place(String id) {
    Integer place = placeOfElement.get(id);
    if (place == null) {
      throw new IllegalArgumentException("no place is called '" + id + "'");
    }
    return place;
  }

  private double gained(int place) {
    return course.state().volumes[place] - course.volumesBefore[place];
  }

  private Outcome.VesselOutcome vessel(Vessel vessel) {
    int place = place(vessel.id());
    Place what = network.places().get(place);
    double before = course.volumesBefore[place];
    double after = course.state().volumes[place];
    return new Outcome.VesselOutcome(
        vessel.id(),
        what.table().level(before),
        what.table().level(after),
        vessel.rim(),
        vessel.bottom(),
        before,
        after,
        recorder.highest[place],
        recorder.highestTime[place],
        salinity(course.saltBefore[place], before),
        salinity(course.state().salt[place], after),
        spilledFrom(place));
  }

  private static double salinity(double salt, double volume) {
    return volume > Recorder.COUNTS ? salt / volume : 0;
  }

  private double spilledFrom(int place) {
    double spilled = 0;
    for (int a = 0; a < network.accounts().size(); a++) {
      Account account = network.accounts().get(a);
      if (account.inside()) {
        continue;
      }
      spilled += account.from() == place ? recorder.carried[0][a] : 0;
    }
    return spilled;
  }

  private Outcome.FloorOutcome floor(String id) {
    int place = place(id);
    double volume = Math.max(course.state().volumes[place], 0);
    Place what = network.places().get(place);
    double received = recorder.received[place];
    return new Outcome.FloorOutcome(
        id,
        volume,
        Math.max(what.table().level(volume) - what.table().bottom(), 0),
        received,
        received > Recorder.COUNTS ? firstArrival(place) : OptionalDouble.empty());
  }

  private OptionalDouble firstArrival(int place) {
    double first = Double.POSITIVE_INFINITY;
    for (int a = 0; a < network.accounts().size(); a++) {
      if (arrives(network.accounts().get(a), place) && !Double.isNaN(recorder.firstTime[a])) {
        first = Math.min(first, recorder.firstTime[a]);
      }
    }
    for (StoryEvent event : course.story()) {
      boolean wet =
          event.what() == StoryEvent.What.FLOOR_WET
              && event.subject().equals(network.places().get(place).id());
      first = wet ? Math.min(first, event.time()) : first;
    }
    return OptionalDouble.of(first);
  }

  /**
   * Whether the first water over this account was water for this place. Of what goes from and to a
   * column in a run only what leaves the column counts as a first.
   */
  private boolean arrives(Account account, int place) {
    boolean fromColumn = network.places().get(account.to()).kind() == Place.Kind.COLUMN;
    return account.to() == place || (account.from() == place && fromColumn);
  }

  private Verdict verdict() {
    boolean caught = false;
    for (int place = 0; place < network.places().size(); place++) {
      boolean got = recorder.received[place] > Recorder.COUNTS;
      switch (network.places().get(place).kind()) {
        case FLOOR, BEYOND -> {
          if (got) {
            return Verdict.WET;
          }
        }
        case BASIN -> caught |= got;
        case VESSEL, COLUMN, TEE, DEVICE, SUPPLY, DRAIN, OUTSIDE -> {}
      }
    }
    return caught || emergencyDrained() ? Verdict.CAUGHT : Verdict.DRY;
  }

  /** Whether an emergency run took water out of the building. */
  private boolean emergencyDrained() {
    for (Pipe pipe : network.pipes()) {
      boolean toDrain = network.places().get(pipe.leg(1).end().place()).kind() == Place.Kind.DRAIN;
      boolean emergency =
          network.installation().runs().stream()
              .anyMatch(run -> run.id().equals(pipe.run()) && run.duty() == Run.Duty.EMERGENCY);
      if (toDrain && emergency && recorder.carried[0][pipe.throughSlot()] > Recorder.COUNTS) {
        return true;
      }
    }
    return false;
  }

  private static Outcome.Margin margin(List<Outcome.VesselOutcome> vessels) {
    Comparator<Outcome.VesselOutcome> byFreeboard =
        Comparator.<Outcome.VesselOutcome>comparingDouble(
                vessel -> vessel.rim() - vessel.highestLevel())
            .thenComparing(Outcome.VesselOutcome::id);
    return vessels.stream()
        .filter(vessel -> vessel.highestLevel() > vessel.bottom() + 1e-6)
        .min(byFreeboard)
        .map(
            vessel ->
                new Outcome.Margin(
                    Optional.of(vessel.id()),
                    vessel.rim() - vessel.highestLevel(),
                    vessel.highestTime()))
        .orElse(new Outcome.Margin(Optional.empty(), 0, 0));
  }

  private OptionalDouble firstSpill() {
    double first = Double.POSITIVE_INFINITY;
    for (double time : recorder.firstTime) {
      first = Double.isNaN(time) ? first : Math.min(first, time);
    }
    return Double.isInfinite(first) ? OptionalDouble.empty() : OptionalDouble.of(first);
  }

  private List<Outcome.DryPump> dryPumps() {
    return course.story().stream()
        .filter(
            event ->
                event.what() == StoryEvent.What.SUCKS_AIR
                    || event.what() == StoryEvent.What.LOSES_PRIME)
        .map(event -> new Outcome.DryPump(event.subject(), event.time()))
        .toList();
  }
}
