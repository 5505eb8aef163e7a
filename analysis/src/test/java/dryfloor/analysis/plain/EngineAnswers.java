package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.Installation;
import java.util.List;
import java.util.stream.Stream;

/** What the engine says about one installation, by name. */
final class EngineAnswers {

  private final Installation drawing;
  private final Inquiry inquiry;

  EngineAnswers(Installation drawing) {
    this.drawing = drawing;
    try {
      this.inquiry = Inquiry.of(drawing, () -> false);
    } catch (BaselineProblem problem) {
      throw new AssertionError(problem.getMessage(), problem);
    }
  }

  Outcome normal() {
    return inquiry.normal();
  }

  FailureResult answer(Failure failure) {
    return inquiry.answer(List.of(failure));
  }

  /** The outcome of a failure, or of normal operation, that must have one. */
  Outcome outcome(String id) {
    if (id.equals(TwoAnswers.NORMAL)) {
      return normal();
    }
    Failure failure =
        FailureCatalogue.of(drawing).stream()
            .filter(f -> FailureNames.id(f).equals(id))
            .findFirst()
            .orElseThrow();
    return switch (answer(failure)) {
      case FailureResult.Answered answered -> answered.outcome();
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }

  /** Level of a vessel, or depth on a floor (m). */
  static double level(Outcome outcome, String where) {
    return Stream.concat(
            outcome.vessels().stream()
                .filter(vessel -> vessel.id().equals(where))
                .map(Outcome.VesselOutcome::levelAfter),
            outcome.floors().stream()
                .filter(floor -> floor.id().equals(where))
                .map(Outcome.FloorOutcome::depth))
        .findFirst()
        .orElseThrow();
  }

  /** Water that a floor or drain got, a supply gave, or that went beyond (m³). */
  static double water(Outcome outcome, String where) {
    if (where.equals(Comparison.BEYOND)) {
      return outcome.beyond();
    }
    Stream<Double> floors =
        outcome.floors().stream()
            .filter(floor -> floor.id().equals(where))
            .map(Outcome.FloorOutcome::received);
    Stream<Double> passed =
        Stream.concat(outcome.drained().stream(), outcome.supplied().stream())
            .filter(p -> p.id().equals(where))
            .map(Outcome.Passed::volume);
    return Stream.concat(floors, passed).findFirst().orElseThrow();
  }
}
