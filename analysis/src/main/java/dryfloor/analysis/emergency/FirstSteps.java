package dryfloor.analysis.emergency;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Goes back from the wet floors along the water's way and names what can be shut or switched off on
 * it: pumps by their circuit, the one that brings most first, because that takes the electricity
 * out of the water as well; then supplies, valves, siphons. A supply from which most of the water
 * comes is shut before all else, and alone where that is enough: pumps that only keep the water
 * going round would let it run down where it runs over, if they stopped. A valve in a drain is
 * never shut unless that drain itself leaks: what it drains would run over.
 */
public final class FirstSteps {

  /** Less water than this (m³) is not worth shutting anything. */
  private static final double WORTH_IT = 1e-4;

  /** A circuit whose pumps bring less than this share of what the first one's do is left alone. */
  private static final double SHARE_WORTH_IT = 0.02;

  /** What the floors got comes from a supply if no more than this share of it can't. */
  private static final double SHARE_FROM_ELSEWHERE = 0.05;

  private final Installation installation;
  private final Outcome outcome;
  private final List<Ledger.Entry> way;

  private FirstSteps(Installation installation, Outcome outcome) {
    this.installation = installation;
    this.outcome = outcome;
    this.way = wayToTheFloors();
  }

  /** What to do first, in order; nothing where no floor gets wet or nothing can be shut. */
  public static List<FirstStep> of(Installation installation, Outcome outcome) {
    FirstSteps steps = new FirstSteps(installation, outcome);
    List<FirstStep> all = new ArrayList<>();
    if (steps.supplyIsEnough()) {
      all.addAll(steps.supplies());
      all.addAll(steps.circuits().stream().filter(steps::bringsOneWay).toList());
      return List.copyOf(all);
    }
    boolean supplyFirst = steps.supplied() > outcome.reachedFloors() / 2;
    all.addAll(supplyFirst ? steps.supplies() : steps.circuits());
    all.addAll(supplyFirst ? steps.circuits() : steps.supplies());
    all.addAll(steps.valves());
    all.addAll(steps.siphons());
    return List.copyOf(all);
  }

  private List<Ledger.Entry> wayToTheFloors() {
    Set<String> reached = new HashSet<>(Set.of(Ledger.BEYOND));
    outcome.floors().stream()
        .filter(floor -> floor.received() > 0)
        .forEach(floor -> reached.add(floor.id()));
    List<Ledger.Entry> entries =
        outcome.ledger().entries().stream().filter(entry -> entry.volume() > WORTH_IT).toList();
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Ledger.Entry entry : entries) {
        grows |= reached.contains(entry.to()) && reached.add(entry.from());
      }
    }
    return entries.stream().filter(entry -> reached.contains(entry.to())).toList();
  }

  /** What supplies gave that are on the way (m³). */
  private double supplied() {
    return way.stream()
        .filter(
            entry ->
                installation.supplies().stream()
                    .anyMatch(supply -> supply.id().equals(entry.from())))
        .mapToDouble(Ledger.Entry::volume)
        .sum();
  }

  /**
   * Whether no floor would get more water if nothing came from outside any more: all that the
   * floors got came from there, none of it out of the vessels on the way, and nothing is open but
   * rims.
   */
  private boolean supplyIsEnough() {
    double elsewhere = SHARE_FROM_ELSEWHERE * outcome.reachedFloors();
    double givenAway =
        outcome.vessels().stream()
            .filter(vessel -> way.stream().anyMatch(entry -> entry.from().equals(vessel.id())))
            .mapToDouble(vessel -> Math.max(0, vessel.volumeBefore() - vessel.volumeAfter()))
            .sum();
    return outcome.reachedFloors() > 0
        && supplied() >= outcome.reachedFloors() - elsewhere
        && givenAway <= elsewhere
        && way.stream().noneMatch(FirstSteps::isOpen);
  }

  /** Water that leaves where something has come open runs out whatever is shut elsewhere. */
  private static boolean isOpen(Ledger.Entry entry) {
    return switch (entry.way()) {
      case LEAK, PARTED, THROWN, BURST -> true;
      case RUN, WEIR, RIM, SILL, POURED, TAKEN, HELD_BY_DEVICE -> false;
    };
  }

  /**
   * Whether a pump of the circuit brings water that does not come back to where it was taken. What
   * stood in its run is brought by no pump.
   */
  private boolean bringsOneWay(FirstStep step) {
    return step instanceof FirstStep.SwitchOff off
        && way.stream()
            .filter(entry -> off.parts().stream().anyMatch(pump -> sitsIn(pump, entry.path())))
            .filter(entry -> !entry.from().equals(entry.path()))
            .anyMatch(entry -> !leadsBack(entry));
  }

  private boolean sitsIn(String pump, String path) {
    return path.equals(pump)
        || installation.runs().stream()
            .filter(run -> run.id().equals(path))
            .flatMap(run -> run.parts().stream())
            .anyMatch(part -> part.id().equals(pump));
  }

  private boolean leadsBack(Ledger.Entry pumped) {
    Set<String> reached = new HashSet<>(Set.of(pumped.to()));
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Ledger.Entry entry : way) {
        grows |= reached.contains(entry.from()) && reached.add(entry.to());
      }
    }
    return reached.contains(pumped.from());
  }

  private List<FirstStep> supplies() {
    return installation.supplies().stream()
        .filter(supply -> way.stream().anyMatch(entry -> entry.from().equals(supply.id())))
        .<FirstStep>map(supply -> new FirstStep.ShutSupply(supply.id()))
        .toList();
  }

  private List<FirstStep> circuits() {
    Set<String> withoutPower = new HashSet<>();
    outcome.story().stream()
        .filter(event -> event.what() == StoryEvent.What.POWER_LOST)
        .forEach(event -> withoutPower.add(event.subject()));
    outcome.story().stream()
        .filter(event -> event.what() == StoryEvent.What.POWER_BACK)
        .forEach(event -> withoutPower.remove(event.subject()));
    Map<String, Set<String>> pumps = new LinkedHashMap<>();
    Map<String, Double> brought = new HashMap<>();
    for (Run run : runsOnTheWay()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.Pump pump) {
          put(pumps, pump.power().circuit(), pump.id());
          brought.merge(pump.power().circuit(), brought(run.id()), Double::sum);
        }
      }
    }
    for (CirculationPump pump : installation.circulationPumps()) {
      if (way.stream().anyMatch(entry -> entry.path().equals(pump.id()))) {
        put(pumps, pump.power().circuit(), pump.id());
        brought.merge(pump.power().circuit(), brought(pump.id()), Double::sum);
      }
    }
    pumps.keySet().removeAll(withoutPower);
    double most = pumps.keySet().stream().mapToDouble(c -> amount(brought, c)).max().orElse(0);
    return pumps.entrySet().stream()
        .filter(entry -> amount(brought, entry.getKey()) >= SHARE_WORTH_IT * most)
        .sorted(
            Comparator.comparingDouble(
                (Map.Entry<String, Set<String>> entry) -> -amount(brought, entry.getKey())))
        .<FirstStep>map(
            entry -> new FirstStep.SwitchOff(entry.getKey(), List.copyOf(entry.getValue())))
        .toList();
  }

  private static double amount(Map<String, Double> brought, String circuit) {
    return brought.getOrDefault(circuit, 0.0);
  }

  /** What went this way towards the floors (m³). */
  private double brought(String path) {
    return way.stream()
        .filter(entry -> entry.path().equals(path))
        .mapToDouble(Ledger.Entry::volume)
        .sum();
  }

  private static void put(Map<String, Set<String>> pumps, String circuit, String pump) {
    pumps.computeIfAbsent(circuit, id -> new LinkedHashSet<>()).add(pump);
  }

  private List<FirstStep> valves() {
    List<FirstStep> steps = new ArrayList<>();
    for (Run run : runsOnTheWay()) {
      if (run.duty() == Run.Duty.FEED || leaks(run)) {
        for (Part part : run.parts()) {
          if (part instanceof Part.Valve valve
              && valve.drive() instanceof Part.Valve.Drive.Hand
              && valve.opening() > 0) {
            steps.add(new FirstStep.ShutValve(valve.id(), run.id()));
          }
        }
      }
    }
    return steps;
  }

  private boolean leaks(Run run) {
    return way.stream()
        .filter(entry -> entry.path().equals(run.id()))
        .anyMatch(entry -> entry.way() == Ledger.Way.PARTED || entry.way() == Ledger.Way.LEAK);
  }

  /** Runs through which water came back to where it was pumped from. */
  private List<FirstStep> siphons() {
    return runsOnTheWay().stream()
        .filter(run -> run.duty() == Run.Duty.FEED)
        .filter(
            run ->
                outcome.story().stream()
                    .anyMatch(
                        event ->
                            event.what() == StoryEvent.What.RUNS_BACKWARDS
                                && event.subject().equals(run.id())))
        .<FirstStep>map(run -> new FirstStep.LetAirIn(run.id()))
        .toList();
  }

  private List<Run> runsOnTheWay() {
    return installation.runs().stream()
        .filter(run -> way.stream().anyMatch(entry -> entry.path().equals(run.id())))
        .toList();
  }
}
