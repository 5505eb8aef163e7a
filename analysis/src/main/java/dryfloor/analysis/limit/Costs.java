package dryfloor.analysis.limit;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Compares all answers with and without a change, to see what it costs. */
final class Costs {

  /** A level (m) or a share of a vessel's water that differs less is not worth telling. */
  private static final double WORTH_TELLING = 5e-3;

  private static final double LITRE = 1e-3;

  private static final double SHARE_WORTH_TELLING = 0.05;

  /** A flow that differs by less (m³/s), a tenth of a litre in a minute, is not worth telling. */
  private static final double FLOW_WORTH_TELLING = 1e-4 / 60;

  private final SweepResult before;
  private final Map<String, Outcome> then;
  private final SweepResult now;

  private Costs(SweepResult before, SweepResult now) {
    this.before = before;
    this.then = outcomes(before);
    this.now = now;
  }

  static List<Cost> of(Proven proven, Today today) {
    SweepResult before = today.results();
    SweepResult now = proven.with();
    SingleChange change = proven.change();
    Costs costs = new Costs(before, now);
    List<Cost> all = new ArrayList<>();
    Changes changes = Changes.between(before, now);
    List<Changes.Change> worse = changes.worse().stream().filter(Costs::isWorthTelling).toList();
    if (!worse.isEmpty()) {
      all.add(new Cost.EndWorse(worse));
    }
    if (!changes.added().isEmpty()) {
      all.add(new Cost.MoreToFail(changes.added()));
    }
    costs.addRunningLevels(change, all);
    costs.addFlows(proven, today, all);
    costs.addLosses(all);
    costs.addDryPumps(all);
    return all;
  }

  private static boolean isWorthTelling(Changes.Change change) {
    return change.isTurned()
        || change.moreWater().orElse(0) >= LITRE
        || -change.moreMargin().orElse(0) >= WORTH_TELLING;
  }

  private static Map<String, Outcome> outcomes(SweepResult sweep) {
    Map<String, Outcome> all = new HashMap<>();
    sweep
        .results()
        .forEach(
            result ->
                outcome(result)
                    .ifPresent(found -> all.put(FailureNames.id(result.failure()), found)));
    return all;
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return result instanceof FailureResult.Answered answered
        ? Optional.of(answered.outcome())
        : Optional.empty();
  }

  /** But for a level that is the change itself. */
  private void addRunningLevels(SingleChange change, List<Cost> costs) {
    for (Outcome.VesselOutcome vessel : now.normal().vessels()) {
      vessel(before.normal(), vessel.id())
          .filter(old -> !isLevelOf(old.id(), change))
          .filter(old -> Math.abs(vessel.levelAfter() - old.levelAfter()) >= WORTH_TELLING)
          .ifPresent(
              old ->
                  costs.add(
                      new Cost.RunsElsewhere(vessel.id(), old.levelAfter(), vessel.levelAfter())));
    }
  }

  private static boolean isLevelOf(String vessel, SingleChange change) {
    return change instanceof SingleChange.Moved moved
        && moved.property().equals(new Property.RunningLevel(vessel));
  }

  /**
   * Of runs that a pump drives, and of that which is changed. All others carry on what these bring.
   */
  private void addFlows(Proven proven, Today today, List<Cost> costs) {
    Optional<Ledger> usual = today.undisturbed().map(Outcome::ledger);
    Optional<Ledger> changed = proven.undisturbed().map(Outcome::ledger);
    if (usual.isPresent() && changed.isPresent()) {
      before.installation().runs().stream()
          .filter(run -> isPumped(run) || isOf(run, proven.change().at()))
          .map(Run::id)
          .map(
              run -> new Cost.FlowsOtherwise(run, flow(run, usual.get()), flow(run, changed.get())))
          .filter(Costs::isWorthTelling)
          .forEach(costs::add);
    }
  }

  private static boolean isPumped(Run run) {
    return run.parts().stream().anyMatch(Part.Pump.class::isInstance);
  }

  private static boolean isOf(Run run, String id) {
    return run.id().equals(id) || run.parts().stream().anyMatch(part -> part.id().equals(id));
  }

  private static boolean isWorthTelling(Cost.FlowsOtherwise flows) {
    double difference = Math.abs(flows.now() - flows.before());
    return difference >= FLOW_WORTH_TELLING
        && difference >= SHARE_WORTH_TELLING * Math.max(flows.before(), flows.now());
  }

  /** What a run carries on average (m³/s), whichever way it goes. */
  private static double flow(String run, Ledger ledger) {
    return ledger.entries().stream()
            .filter(entry -> entry.path().equals(run) && entry.way() == Ledger.Way.RUN)
            .mapToDouble(Ledger.Entry::volume)
            .max()
            .orElse(0)
        / ledger.until();
  }

  /**
   * For each vessel the failure after which it is left with least, if that is less than before. One
   * that runs fuller and is emptied as before is left with no less.
   */
  private void addLosses(List<Cost> costs) {
    List<Outcome.VesselOutcome> filled =
        before.normal().vessels().stream().filter(v -> v.volumeAfter() >= LITRE).toList();
    for (Outcome.VesselOutcome vessel : filled) {
      Optional<Cost.LosesMore> worst = Optional.empty();
      for (FailureResult result : now.results()) {
        Optional<Cost.LosesMore> here = loss(vessel, result);
        if (here.isPresent() && worst.filter(w -> w.now() <= here.get().now()).isEmpty()) {
          worst = here;
        }
      }
      worst.ifPresent(costs::add);
    }
  }

  private Optional<Cost.LosesMore> loss(Outcome.VesselOutcome vessel, FailureResult result) {
    Failure failure = result.failure();
    return outcome(result)
        .flatMap(present -> vessel(present, vessel.id()))
        .flatMap(
            present ->
                Optional.ofNullable(then.get(FailureNames.id(failure)))
                    .flatMap(old -> vessel(old, vessel.id()))
                    .filter(
                        old ->
                            Math.min(
                                    lost(present) - lost(old),
                                    old.volumeAfter() - present.volumeAfter())
                                > SHARE_WORTH_TELLING * vessel.volumeAfter())
                    .map(
                        old ->
                            new Cost.LosesMore(
                                vessel.id(), failure, old.volumeAfter(), present.volumeAfter())));
  }

  /** What it holds less than in normal operation (m³). */
  private static double lost(Outcome.VesselOutcome vessel) {
    return vessel.volumeBefore() - vessel.volumeAfter();
  }

  private void addDryPumps(List<Cost> costs) {
    Set<String> seen = new HashSet<>(dry(before.normal()));
    for (FailureResult result : now.results()) {
      Optional<Set<String>> old =
          Optional.ofNullable(then.get(FailureNames.id(result.failure()))).map(Costs::dry);
      outcome(result).filter(present -> old.isPresent()).map(Costs::dry).orElse(Set.of()).stream()
          .filter(pump -> !old.orElseThrow().contains(pump) && seen.add(pump))
          .sorted()
          .forEach(pump -> costs.add(new Cost.SucksAir(pump, result.failure())));
    }
  }

  private static Set<String> dry(Outcome outcome) {
    return outcome.dryPumps().stream().map(Outcome.DryPump::pump).collect(Collectors.toSet());
  }

  private static Optional<Outcome.VesselOutcome> vessel(Outcome outcome, String id) {
    return outcome.vessels().stream().filter(vessel -> vessel.id().equals(id)).findFirst();
  }
}
