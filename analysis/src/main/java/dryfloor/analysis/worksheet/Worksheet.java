package dryfloor.analysis.worksheet;

import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Every failure mode with its effect, the worst first.
 *
 * @param scale by which the effects are graded
 */
public record Worksheet(SeverityScale scale, List<WorksheetLine> lines) {

  /** Less water than this (m³) does not show that a basin or drain was needed. */
  private static final double DRIBBLE = 1e-5;

  public Worksheet {
    lines = List.copyOf(lines);
  }

  /** The worksheet of an analysis; failures that the drawing switches off are not on it. */
  public static Worksheet of(SweepResult sweep, SeverityScale scale) {
    return new Worksheet(
        scale,
        sweep.worstFirst().stream()
            .filter(result -> !(result instanceof FailureResult.Skipped))
            .map(result -> line(sweep, result, scale))
            .toList());
  }

  private static WorksheetLine line(SweepResult sweep, FailureResult result, SeverityScale scale) {
    List<String> components = FailureTraits.components(result.failure());
    Optional<Outcome> outcome = outcome(result);
    return new WorksheetLine(
        result,
        components.isEmpty() ? Optional.empty() : Optional.of(components.getLast()),
        outcome.map(scale::of),
        FailureTraits.isHidden(result.failure(), sweep.installation()),
        outcome.map(found -> acted(sweep, found)).orElse(List.of()));
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  /**
   * What stood between the failure and the floor, in the order in which it did: a control only
   * where it stopped something, not where it started a pump as on any other day.
   */
  private static List<String> acted(SweepResult sweep, Outcome outcome) {
    Set<String> acted = new LinkedHashSet<>();
    for (StoryEvent event : outcome.story()) {
      switch (event.what()) {
        case STOPS -> acted.add(event.other());
        case CLOSES, SIPHON_BREAKS, CATCHES -> acted.add(event.subject());
        default -> {}
      }
    }
    acted.remove("");
    for (Outcome.Passed drain : outcome.drained()) {
      if (drain.volume() > DRIBBLE + drainedNormally(sweep, drain.id())) {
        acted.add(drain.id());
      }
    }
    acted.removeIf(id -> isSump(sweep.installation(), id));
    return List.copyOf(acted);
  }

  private static double drainedNormally(SweepResult sweep, String drain) {
    return sweep.normal().drained().stream()
        .filter(passed -> passed.id().equals(drain))
        .mapToDouble(Outcome.Passed::volume)
        .sum();
  }

  /** A vessel that holds water anyway is no protection. */
  private static boolean isSump(Installation installation, String id) {
    return installation.vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .anyMatch(vessel -> vessel.role() != Vessel.Role.BASIN);
  }
}
