package dryfloor.analysis.limit;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.SweepResult;
import java.util.Optional;

/**
 * A change that mends and breaks nothing.
 *
 * @param with all answers with it
 * @param undisturbed what goes on with it when nothing fails; none where that comes to no answer
 */
record Proven(SingleChange change, SweepResult with, Optional<Outcome> undisturbed) {}
