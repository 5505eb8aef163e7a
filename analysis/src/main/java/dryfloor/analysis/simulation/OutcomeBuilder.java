package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.Trajectory;
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
import java.util.TreeMap;

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
        ledger(),
        story(),
        allNotes(notes),
        trajectory());
  }

  private List<Note> allNotes(List<Note> given) {
    List<Note> all = new ArrayList<>(given);
    all.addAll(course.notes());
    network.installation().vessels().stream()
        .filter(this::mayFloat)
        .forEach(vessel -> all.add(new Note.MayFloat(vessel.id())));
    return all;
  }

  /**
   * Archimedes: the water that a vessel displaces against its own mass and what it holds at the
   * end.
   */
  private boolean mayFloat(Vessel vessel) {
    if (vessel.emptyMass().isEmpty()) {
      return false;
    }
    double around = recorder.highest[place(vessel.standsIn())] - vessel.bottom();
    double holds = course.state().volumes[place(vessel.id())];
    double density = network.water().density();
    return vessel.shape().volumeBelow(Math.min(around, vessel.shape().height())) * density
        > vessel.emptyMass().getAsDouble() + holds * density;
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

  // The ledger.

  private Ledger ledger() {
    List<Ledger.Entry> entries = new ArrayList<>();
    for (int a = 0; a < network.accounts().size(); a++) {
      for (int direction = 0; direction < 2; direction++) {
        if (recorder.carried[direction][a] > 0) {
          entries.add(entry(a, direction));
        }
      }
    }
    return new Ledger(entries, standing(), course.countedUntil, imbalance());
  }

  private Ledger.Entry entry(int a, int direction) {
    Account account = network.accounts().get(a);
    int from = direction == 0 ? account.from() : account.to();
    int to = direction == 0 ? account.to() : account.from();
    double saltKilograms = course.salt.carried[direction][a] * network.water().density() / 1000;
    return new Ledger.Entry(
        account.path(),
        account.way(),
        network.places().get(from).id(),
        network.places().get(to).id(),
        recorder.carried[direction][a],
        saltKilograms);
  }

  private List<Ledger.Standing> standing() {
    Map<String, double[]> standing = new TreeMap<>();
    for (int place = 0; place < network.places().size(); place++) {
      Place what = network.places().get(place);
      boolean counts =
          switch (what.kind()) {
            case COLUMN, TEE, DEVICE -> true;
            case VESSEL, BASIN, FLOOR, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
          };
      if (counts) {
        double[] sums = standing.computeIfAbsent(what.id(), id -> new double[2]);
        sums[0] += course.volumesBefore[place];
        sums[1] += course.state().volumes[place];
      }
    }
    return standing.entrySet().stream()
        .map(e -> new Ledger.Standing(e.getKey(), e.getValue()[0], e.getValue()[1]))
        .toList();
  }

  private double imbalance() {
    double sum = 0;
    for (int place = 0; place < network.places().size(); place++) {
      sum += gained(place);
    }
    return sum;
  }

  // The story.

  /** In order of time, with the final amounts filled in where an event begins something. */
  private List<StoryEvent> story() {
    return course.story().stream()
        .sorted(Comparator.comparingDouble(StoryEvent::time))
        .map(this::withAmount)
        .toList();
  }

  private StoryEvent withAmount(StoryEvent event) {
    double volume =
        switch (event.what()) {
          case SPILLS -> over(Ledger.Way.RIM, event.subject(), event.other());
          case FLOODED -> over(Ledger.Way.RIM, event.other(), event.subject());
          case SILL_REACHED -> over(Ledger.Way.SILL, event.subject(), event.other());
          case LEAKS, BURSTS, BEGINS_TO_FLOW -> total(event.subject(), event.other());
          case CATCHES, FLOOR_WET -> recorder.received[place(event.subject())];
          case POURED, RUN_EMPTIES, RUNS_OUT -> event.volume().orElse(0);
          case POWER_LOST,
              POWER_BACK,
              STOPS,
              STARTS,
              OPENS,
              CLOSES,
              ACTS,
              LETS_GO,
              RUNS_BACKWARDS,
              TAKES_AIR_AT_OPENING,
              SIPHON_BREAKS,
              COLUMN_PARTS,
              RUN_PRIMES,
              SUCKS_AIR,
              LOSES_PRIME,
              STOPS_SPILLING,
              EMPTY ->
              Double.NaN;
        };
    return new StoryEvent(
        event.time(),
        event.what(),
        event.subject(),
        event.other(),
        Double.isNaN(volume) ? OptionalDouble.empty() : OptionalDouble.of(volume));
  }

  /** Water over an edge from one place to another (m³). */
  private double over(Ledger.Way way, String from, String to) {
    double sum = 0;
    for (int a = 0; a < network.accounts().size(); a++) {
      Account account = network.accounts().get(a);
      if (account.way() == way) {
        String first = network.places().get(account.from()).id();
        String second = network.places().get(account.to()).id();
        sum += first.equals(from) && second.equals(to) ? recorder.carried[0][a] : 0;
        sum += second.equals(from) && first.equals(to) ? recorder.carried[1][a] : 0;
      }
    }
    return sum;
  }

  private double total(String path, String to) {
    double sum = 0;
    for (int a = 0; a < network.accounts().size(); a++) {
      Account account = network.accounts().get(a);
      if (account.path().equals(path)) {
        sum += network.places().get(account.to()).id().equals(to) ? recorder.carried[0][a] : 0;
        sum += network.places().get(account.from()).id().equals(to) ? recorder.carried[1][a] : 0;
      }
    }
    return sum;
  }

  private Trajectory trajectory() {
    List<String> ids = new ArrayList<>();
    List<Integer> shown = new ArrayList<>();
    for (int place = 0; place < network.places().size(); place++) {
      if (network.places().get(place).kind().isShown()) {
        ids.add(network.places().get(place).id());
        shown.add(place);
      }
    }
    double[] times = new double[recorder.moments()];
    double[][] levels = new double[times.length][shown.size()];
    for (int moment = 0; moment < times.length; moment++) {
      times[moment] = recorder.time(moment);
      for (int column = 0; column < shown.size(); column++) {
        levels[moment][column] = recorder.level(moment, shown.get(column));
      }
    }
    return new Trajectory(ids, times, levels, recorder.flows(ways()));
  }

  private List<Flows.Way> ways() {
    return network.accounts().stream()
        .map(
            account ->
                new Flows.Way(
                    account.path(),
                    account.way(),
                    network.places().get(account.from()).id(),
                    network.places().get(account.to()).id()))
        .toList();
  }
}
