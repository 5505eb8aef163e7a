package dryfloor.app.view.learn;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A failure whose outcome is to be guessed.
 *
 * @param drawing that it happens in
 * @param failure that happens
 * @param outcome the truth, not to be shown before the guess
 */
public record Exercise(Installation drawing, Failure failure, Outcome outcome) {

  /** What is asked: the name of the failure. */
  public String question() {
    return FailureNames.name(failure, drawing);
  }

  /** The vessels whose levels are asked for: those that hold water at first; basins are not. */
  public List<Outcome.VesselOutcome> asked() {
    Set<String> vessels =
        drawing.vessels().stream()
            .filter(vessel -> !vessel.isBasin())
            .map(Vessel::id)
            .collect(Collectors.toSet());
    return outcome.vessels().stream().filter(vessel -> vessels.contains(vessel.id())).toList();
  }

  /** How much there is to think of. */
  public Difficulty difficulty() {
    return Difficulty.of(outcome);
  }
}
