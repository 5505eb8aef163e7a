package dryfloor.analysis.fuzz;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** What holds for any answer, however strange the drawing; all that does not is collected. */
final class PossibleAnswer {

  /** The project's promise: of all the water there is. */
  private static final double BALANCE = 1e-9;

  /** Nobody comes back when expected: so many times the unattended time is the longest. */
  private static final double LONGER_AWAY = 2;

  /** What the project promises for a volume (m³). */
  private static final double A_MILLILITRE = 1e-6;

  /** What the project promises for a level (m). */
  private static final double A_TENTH_OF_A_MILLIMETRE = 1e-4;

  /**
   * Salt is followed to this share of what a place could hold, or a place with as little water as
   * the next figure; in a few drops that says nothing.
   */
  private static final double SHARE_OF_SALT = 2e-4;

  /** (m³) */
  private static final double A_LITTLE = 0.005;

  private final Installation installation;
  private final Outcome outcome;
  private final List<String> doubts = new ArrayList<>();

  private PossibleAnswer(Installation installation, Outcome outcome) {
    this.installation = installation;
    this.outcome = outcome;
  }

  /** What is impossible in an answer; nothing if it may be right. */
  static List<String> doubts(Installation installation, Outcome outcome) {
    PossibleAnswer answer = new PossibleAnswer(installation, outcome);
    answer.checkNumbers();
    answer.checkTimes();
    outcome.vessels().forEach(answer::checkVessel);
    answer.checkSalinity();
    answer.checkVolumes();
    answer.checkBalance();
    answer.checkVerdict();
    return answer.doubts;
  }

  private void expect(boolean holds, String what, double found) {
    if (!holds) {
      doubts.add(what + String.format(Locale.ROOT, " (%.9g)", found));
    }
  }

  private void checkNumbers() {
    Figures.of(outcome)
        .forEach((path, number) -> expect(Double.isFinite(number), path + " is no number", number));
  }

  private void checkTimes() {
    double away = LONGER_AWAY * installation.conditions().away() * (1 + BALANCE);
    double before = 0;
    for (StoryEvent event : outcome.story()) {
      expect(event.time() >= before, "the story goes back in time", event.time());
      expect(event.time() <= away, "the story goes on after the end", event.time());
      before = event.time();
    }
    double end =
        switch (outcome.ending()) {
          case Ending.AtRest rest -> rest.time();
          case Ending.Repeats repeats -> repeats.since();
          case Ending.Continues continues -> continues.since();
          case Ending.StillMoving moving -> moving.time();
          case Ending.UpAndDown upAndDown -> upAndDown.time();
        };
    expect(end >= 0 && end <= away, "the end lies outside of the unattended time", end);
  }

  private void checkVessel(Outcome.VesselOutcome vessel) {
    String id = vessel.id();
    double under = vessel.bottom() - vessel.levelAfter();
    boolean below = under > A_TENTH_OF_A_MILLIMETRE && vessel.volumeAfter() < -A_MILLILITRE;
    expect(!below, id + " ends below its bottom", under);
    double peak = vessel.highestLevel() + A_TENTH_OF_A_MILLIMETRE;
    expect(peak >= vessel.levelAfter(), id + " ends above its highest level", vessel.levelAfter());
    expect(peak >= vessel.levelBefore(), id + " began above its highest level", peak);
    expect(vessel.spilled() >= 0, id + " spilled less than nothing", vessel.spilled());
    if (outcome.verdict() == Verdict.DRY) {
      double over = vessel.highestLevel() - vessel.rim();
      expect(over <= A_TENTH_OF_A_MILLIMETRE, id + " stands above its rim and all is dry", over);
    }
  }

  /** Mixing lies between what is mixed. */
  private void checkSalinity() {
    List<Double> sources = new ArrayList<>();
    installation.vessels().stream().map(Vessel::salinity).forEach(sources::add);
    installation.supplies().stream().map(Supply::salinity).forEach(sources::add);
    sources.addAll(installation.failureSettings().topUps().isEmpty() ? List.of() : List.of(0.0));
    double least = Collections.min(sources);
    double most = Collections.max(sources);
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      double volume = Math.max(vessel.volumeAfter(), A_MILLILITRE);
      double slack =
          QuantityKind.SALINITY.smallest() + SHARE_OF_SALT * most * (1 + A_LITTLE / volume);
      double salinity = vessel.salinityAfter();
      boolean dry = vessel.volumeAfter() <= A_MILLILITRE;
      expect(salinity <= most + slack, vessel.id() + " is saltier than all sources", salinity);
      boolean salty = dry || salinity >= least - slack;
      expect(salty, vessel.id() + " is fresher than all sources", salinity);
    }
  }

  private void checkVolumes() {
    outcome
        .floors()
        .forEach(
            floor -> expect(floor.received() >= 0, floor.id() + " received", floor.received()));
    expect(outcome.beyond() >= -A_MILLILITRE, "beyond the drawing", outcome.beyond());
    double least = -A_MILLILITRE - BALANCE * water();
    for (Ledger.Standing standing : outcome.ledger().standing()) {
      double volume = Math.min(standing.before(), standing.after());
      expect(volume >= least, "in " + standing.id() + " stands", volume);
    }
  }

  /** Water of which the ledger keeps account (m³). */
  private double water() {
    return DoubleStream.concat(
            outcome.vessels().stream().mapToDouble(Outcome.VesselOutcome::volumeBefore),
            outcome.supplied().stream().mapToDouble(Outcome.Passed::volume))
        .map(Math::abs)
        .sum();
  }

  private void checkBalance() {
    double slack = BALANCE * water();
    double imbalance = outcome.ledger().imbalance();
    expect(Math.abs(imbalance) <= slack, "water out of nothing", imbalance);
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      double explained = vessel.volumeBefore() + net(vessel.id(), Ledger.Entry::volume);
      double off = vessel.volumeAfter() - explained;
      expect(Math.abs(off) <= slack, "the ledger does not explain " + vessel.id(), off);
    }
    double density = FlowNetwork.of(installation, List.of()).water().density();
    double salt = density / 1000 * (water() * saltiest() + A_MILLILITRE);
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      if (Math.min(vessel.volumeBefore(), vessel.volumeAfter()) > A_MILLILITRE) {
        double gained =
            vessel.volumeAfter() * vessel.salinityAfter()
                - vessel.volumeBefore() * vessel.salinityBefore();
        double off = density / 1000 * gained - net(vessel.id(), Ledger.Entry::salt);
        expect(Math.abs(off) <= BALANCE * salt, "no salt explains " + vessel.id(), off);
      }
    }
    for (Outcome.Passed drain : outcome.drained()) {
      double off = drain.volume() - net(drain.id(), Ledger.Entry::volume);
      expect(Math.abs(off) <= slack, "the ledger does not explain " + drain.id(), off);
    }
  }

  private double saltiest() {
    return DoubleStream.concat(
            installation.vessels().stream().mapToDouble(Vessel::salinity),
            installation.supplies().stream().mapToDouble(Supply::salinity))
        .max()
        .orElse(0);
  }

  private double net(String place, ToDoubleFunction<Ledger.Entry> what) {
    double net = 0;
    for (Ledger.Entry entry : outcome.ledger().entries()) {
      net += entry.to().equals(place) ? what.applyAsDouble(entry) : 0;
      net -= entry.from().equals(place) ? what.applyAsDouble(entry) : 0;
    }
    return net;
  }

  private void checkVerdict() {
    double wet = outcome.onFloors();
    switch (outcome.verdict()) {
      case DRY, CAUGHT -> {
        expect(wet <= A_MILLILITRE, "floors are wet, and nothing is said of it", wet);
        expect(
            outcome.firstWetFloor().isEmpty(),
            "a floor got wet, but when all ended it is dry",
            wet);
      }
      case WET -> {
        double reached = outcome.reachedFloors() + outcome.beyond();
        expect(reached > 0, "floors are told to be wet by nothing", reached);
      }
    }
  }
}
