package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.Installation;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tells when two failures certainly have nothing to do with each other.
 *
 * <p>A failure changes what its effects take hold of, and then every level and every flow that the
 * simulation of it shows to be other than when nothing fails. All else stays as it is for the whole
 * time. If no thing that the one failure changes is changed by the other, and none depends on
 * changes of both, then what each failure does alone, side by side, satisfies every law of the
 * installation with both; as that has one answer only, this is it.
 *
 * <p>"Other" is meant to the accuracy of the answers: a level by {@link #LEVEL}, the water over one
 * way by {@link #VOLUME}, neither of which is shown to anybody.
 */
final class Influences {

  /** A level that stays within this did not change (m): a tenth of the accuracy of levels. */
  static final double LEVEL = 1e-5;

  /** Water that does not come to this over the whole time did not change a way (m³). */
  static final double VOLUME = 1e-6;

  /** Nor does this share of what passes it anyway. */
  static final double SHARE = 1e-7;

  private final Dependence dependence;
  private final EffectReach reach;
  private final Outcome undisturbed;
  private final Map<Passage, Double> usual;

  /** A way and a direction. */
  private record Passage(String path, Ledger.Way way, String from, String to) {}

  /**
   * What a failure changes, and what depends on that.
   *
   * @param everywhere whether nothing can be ruled out
   */
  record Influence(boolean everywhere, Set<Thing> felt) {
    Influence {
      felt = Set.copyOf(felt);
    }

    /** What both change, each for itself. */
    Influence and(Influence other) {
      Set<Thing> both = new HashSet<>(felt);
      both.addAll(other.felt);
      return new Influence(everywhere || other.everywhere, both);
    }

    boolean meets(Influence other) {
      return everywhere || other.everywhere || felt.stream().anyMatch(other.felt::contains);
    }
  }

  /**
   * Influences in an installation.
   *
   * @param undisturbed what goes on there when nothing fails
   */
  Influences(Installation installation, Outcome undisturbed) {
    this.dependence = new Dependence(installation);
    this.reach = new EffectReach(installation, dependence);
    this.undisturbed = undisturbed;
    this.usual = passed(undisturbed);
  }

  /** Influences in an installation that has settled; none where what goes on there has no end. */
  static Optional<Influences> of(Inquiry inquiry) {
    return inquiry.undisturbed().map(usual -> new Influences(inquiry.installation(), usual));
  }

  /** What failures with these effects and this outcome change. */
  Influence of(List<Effect> effects, Outcome outcome) {
    boolean everywhere =
        effects.stream().anyMatch(EffectReach::isEverywhere)
            || outcome.notes().stream().anyMatch(Note::isDoubt);
    Set<Thing> changed = new HashSet<>();
    effects.stream().flatMap(reach::of).forEach(changed::add);
    addLevels(outcome, changed);
    addPassages(outcome, changed);
    addStanding(outcome, changed);
    return new Influence(everywhere, dependence.withLookers(changed));
  }

  /**
   * What is otherwise where one element or part is drawn otherwise; nothing where no thing has its
   * id.
   *
   * @param without what goes on there when nothing fails
   */
  Optional<Influence> ofChange(String id, Outcome without) {
    Influence seen = of(List.of(), without);
    return dependence
        .find(id)
        .map(thing -> new Influence(false, dependence.withLookers(Set.of(thing))).and(seen));
  }

  private void addLevels(Outcome outcome, Set<Thing> changed) {
    Trajectory levels = outcome.trajectory();
    for (String place : levels.places()) {
      double before = undisturbed.trajectory().level(0, place);
      for (int moment = 0; moment < levels.moments(); moment++) {
        if (Math.abs(levels.level(moment, place) - before) > LEVEL) {
          add(place, changed);
        }
      }
    }
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      if (vessel.highestLevel() > undisturbed.trajectory().level(0, vessel.id()) + LEVEL) {
        add(vessel.id(), changed);
      }
    }
  }

  private void addPassages(Outcome outcome, Set<Thing> changed) {
    Map<Passage, Double> passed = passed(outcome);
    double share = outcome.ledger().until() / undisturbed.ledger().until();
    Set<Passage> all = new HashSet<>(passed.keySet());
    all.addAll(usual.keySet());
    for (Passage passage : all) {
      double expected = usual.getOrDefault(passage, 0.0) * share;
      double difference = Math.abs(passed.getOrDefault(passage, 0.0) - expected);
      if (difference > VOLUME + SHARE * expected) {
        add(passage.path(), changed);
        add(passage.from(), changed);
        add(passage.to(), changed);
      }
    }
  }

  private static Map<Passage, Double> passed(Outcome outcome) {
    Map<Passage, Double> passed = new HashMap<>();
    for (Ledger.Entry entry : outcome.ledger().entries()) {
      passed.merge(
          new Passage(entry.path(), entry.way(), entry.from(), entry.to()),
          entry.volume(),
          Double::sum);
    }
    return passed;
  }

  private void addStanding(Outcome outcome, Set<Thing> changed) {
    for (Ledger.Standing standing : outcome.ledger().standing()) {
      if (Math.abs(standing.after() - standing.before()) > VOLUME) {
        add(standing.id(), changed);
      }
    }
  }

  private void add(String id, Set<Thing> changed) {
    Optional<Thing> thing = dependence.find(id);
    thing.ifPresent(changed::add);
  }
}
