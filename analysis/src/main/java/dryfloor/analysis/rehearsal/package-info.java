/**
 * Rehearsing failures on the real thing, and what the measured levels tell: {@link
 * dryfloor.analysis.rehearsal.Rehearsal} says which failures can be rehearsed and what to expect,
 * {@link dryfloor.analysis.rehearsal.LikelyCauses} runs a failure again with one thing otherwise
 * than drawn, and ranks those things by how well they explain what was measured. Values only.
 */
@NullMarked
package dryfloor.analysis.rehearsal;

import org.jspecify.annotations.NullMarked;
