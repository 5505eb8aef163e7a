package dryfloor.analysis.installation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import java.util.List;

/** Lets something happen in an installation. */
public final class Trial {

  private Trial() {}

  /** Normal operation from the declared levels, whether or not it settles. */
  public static Outcome normal(Installation installation) {
    return OutcomeBuilder.of(settled(installation), List.of());
  }

  /** Failures at once, from a normal operation that must be dry and settled. */
  public static Outcome after(Installation installation, Failure... failures) {
    try {
      return switch (Sweep.together(installation, List.of(failures))) {
        case FailureResult.Answered answered -> answered.outcome();
        case FailureResult.Unanswered unanswered ->
            throw new AssertionError("no answer: " + unanswered.reason());
        case FailureResult.Skipped skipped ->
            throw new AssertionError("skipped: " + skipped.reason());
      };
    } catch (BaselineProblem problem) {
      throw new AssertionError(problem.getMessage(), problem);
    }
  }

  /** Plain changes, from normal operation as far as it got. */
  public static Outcome changing(Installation installation, Effect... effects) {
    return changing(Accuracy.USUAL, installation, effects);
  }

  public static Outcome changing(Accuracy accuracy, Installation installation, Effect... effects) {
    Course normal = settled(installation);
    FlowNetwork changed = FlowNetwork.of(installation, List.of(effects));
    return OutcomeBuilder.of(
        Simulation.ofFailure(normal, changed, accuracy, () -> false), List.of());
  }

  private static Course settled(Installation installation) {
    return Simulation.ofNormalOperation(
        FlowNetwork.of(installation, List.of()), Accuracy.USUAL, () -> false);
  }

  /** When something first happened to a component (s). */
  public static double timeOf(Outcome outcome, StoryEvent.What what, String subject) {
    return outcome.story().stream()
        .filter(event -> event.what() == what && event.subject().equals(subject))
        .mapToDouble(StoryEvent::time)
        .findFirst()
        .orElseThrow(
            () -> new AssertionError("no " + what + " of '" + subject + "' in " + outcome.story()));
  }

  public static boolean happened(Outcome outcome, StoryEvent.What what, String subject) {
    return outcome.story().stream()
        .anyMatch(event -> event.what() == what && event.subject().equals(subject));
  }
}
