/**
 * What was measured in a rehearsal is entered here and held against what was expected: {@link
 * dryfloor.app.view.rehearsal.MeasuredForm} fills the window. Which levels are expected, and what
 * would explain others, is worked out in {@code dryfloor.analysis.rehearsal}.
 */
@NullMarked
package dryfloor.app.view.rehearsal;

import org.jspecify.annotations.NullMarked;
