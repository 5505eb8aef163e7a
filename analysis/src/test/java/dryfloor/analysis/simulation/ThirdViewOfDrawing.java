package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** One installation, its failures followed by the engine and by the third view. */
final class ThirdViewOfDrawing {

  private static final double AN_HOUR = 3600;

  private final String scenario;
  private final Installation drawing;
  private final int patience;
  private final Course normal;

  /**
   * Takes up a drawing.
   *
   * @param patience steps after which the third view of a failure is given up, each of them some of
   *     the integrator
   */
  ThirdViewOfDrawing(String scenario, Installation drawing, int patience) {
    this.scenario = scenario;
    this.drawing = drawing;
    this.patience = patience;
    this.normal =
        Simulation.ofNormalOperation(
            FlowNetwork.of(drawing, List.of()), Accuracy.USUAL, () -> false);
  }

  /**
   * Normal operation and every so many-th failure, to the end or for an hour, as patience lasts.
   */
  List<ThirdViewRecord.Entry> everySoMany(int every) {
    List<ThirdViewRecord.Entry> entries = new ArrayList<>();
    entries.add(new ThirdViewRecord.Compared(normalOperation()));
    for (int i = 0; i < failures().size(); i += every) {
      entries.add(entry(failures().get(i)));
    }
    return entries;
  }

  private ThirdViewRecord.Entry entry(Failure failure) {
    Optional<TwoSteppings> both = toTheEnd(failure).or(() -> until(failure, AN_HOUR));
    return both.<ThirdViewRecord.Entry>map(ThirdViewRecord.Compared::new)
        .orElseGet(() -> new ThirdViewRecord.GivenUp(scenario, FailureNames.id(failure)));
  }

  List<Failure> failures() {
    return FailureCatalogue.of(drawing);
  }

  TwoSteppings normalOperation() {
    FlowNetwork network = FlowNetwork.of(drawing, List.of());
    return compare(
        "normal operation",
        drawing.conditions().away(),
        normal,
        ThirdView.ofNormalOperation(network, ExplicitMethod.EXACT, impatience()));
  }

  /** A failure to its end; empty if the explicit integrator takes too long for that. */
  Optional<TwoSteppings> toTheEnd(Failure failure) {
    return until(failure, drawing.conditions().away());
  }

  /** A failure up to a time (s), with whatever still moves then. */
  Optional<TwoSteppings> until(Failure failure, double until) {
    double share = Math.min(1, until / drawing.conditions().away());
    List<Effect> effects = new ArrayList<>(FailureResolver.resolve(drawing, List.of(failure)));
    effects.add(new Effect.AwayTimes(share));
    FlowNetwork failed = FlowNetwork.of(drawing, effects);
    Course engine = Simulation.ofFailure(normal, failed, Accuracy.USUAL, () -> false);
    BooleanSupplier impatience = impatience();
    try {
      Course third = ThirdView.ofFailure(normal, failed, ExplicitMethod.EXACT, impatience);
      return Optional.of(compare(FailureNames.id(failure), failed.away(), engine, third));
    } catch (NoAnswer gaveUp) {
      if (impatience.getAsBoolean()) {
        return Optional.empty();
      }
      throw gaveUp;
    }
  }

  /** Asked once a step. */
  private BooleanSupplier impatience() {
    AtomicInteger steps = new AtomicInteger();
    return () -> steps.incrementAndGet() > patience;
  }

  private TwoSteppings compare(String failure, double until, Course engine, Course third) {
    Outcome usual = OutcomeBuilder.of(engine, List.of());
    boolean toTheEnd = until >= drawing.conditions().away();
    return TwoSteppings.of(
        scenario, failure, until, toTheEnd, usual, OutcomeBuilder.of(third, List.of()));
  }
}
