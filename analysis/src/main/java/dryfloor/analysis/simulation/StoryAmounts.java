package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.StoryEvent;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;

/** Fills the final amounts into the story where an event begins something. */
final class StoryAmounts {

  private final FlowNetwork network;
  private final Recorder recorder;
  private final ToIntFunction<String> placeOf;

  private StoryAmounts(Course course, ToIntFunction<String> placeOf) {
    this.network = course.network();
    this.recorder = course.recorder;
    this.placeOf = placeOf;
  }

  /**
   * The story of a course in order of time.
   *
   * @param placeOf index of the place of an element
   */
  static List<StoryEvent> story(Course course, ToIntFunction<String> placeOf) {
    StoryAmounts amounts = new StoryAmounts(course, placeOf);
    return course.story().stream()
        .sorted(Comparator.comparingDouble(StoryEvent::time))
        .map(amounts::withAmount)
        .toList();
  }

  private StoryEvent withAmount(StoryEvent event) {
    double volume =
        switch (event.what()) {
          case SPILLS -> over(Ledger.Way.RIM, event.subject(), event.other());
          case FLOODED -> over(Ledger.Way.RIM, event.other(), event.subject());
          case SILL_REACHED -> over(Ledger.Way.SILL, event.subject(), event.other());
          case LEAKS, BURSTS, BEGINS_TO_FLOW -> total(event.subject(), event.other());
          case CATCHES, FLOOR_WET -> recorder.received[placeOf.applyAsInt(event.subject())];
          case POURED, TAKEN, TAKEN_IN_PART, RUN_EMPTIES, RUNS_OUT -> event.volume().orElse(0);
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
              EMPTY,
              FAILS,
              PUT_RIGHT ->
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
}
