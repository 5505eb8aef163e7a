/**
 * Water in time: {@link dryfloor.analysis.simulation.Simulation} is the way in.
 *
 * <p><b>The idea.</b> The volumes of all places are the state. Flows follow from the levels and
 * from the modes: which runs are full of water and which have air at their crest, which parts run,
 * which switches have acted. Within one set of modes every flow is a continuous function of the
 * levels and the volumes obey a stiff, cooperative system of differential equations, which {@code
 * VolumeStep} crosses in few steps however narrow a chamber is. Modes change at events only.
 *
 * <p><b>Rules of the events.</b>
 *
 * <ol>
 *   <li>A {@code Trigger} has a gauge that is above zero while its mode lasts, and an action.
 *   <li>After each step every gauge is read. If one is no longer above zero, the moment is found by
 *       closing in on the crossing, the step is taken again up to there, and the action is done.
 *   <li>At one moment actions are done until no gauge asks for more. A drawing that keeps asking is
 *       reported as having no answer; it is never given one.
 *   <li>Events at known times (power, delays, timers) end a step exactly.
 *   <li>Each pair of opposite modes has different thresholds or a direction of flow between them,
 *       so that one can't undo the other at the same moment.
 * </ol>
 *
 * <p><b>Sliding.</b> A pump that sucks at its opening has its flow cut back over the last {@code
 * InletDepths#SKIN} of water above it, so the level comes to rest there and the pump delivers just
 * what arrives. Below the opening what stands above the pump falls back through it, as fast as the
 * water goes that should have kept the opening covered.
 */
@NullMarked
package dryfloor.analysis.simulation;

import org.jspecify.annotations.NullMarked;
