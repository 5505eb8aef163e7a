/**
 * Every failure of one installation: {@link dryfloor.analysis.sweep.Sweep} is the way in for
 * everybody who wants answers.
 */
@NullMarked
package dryfloor.analysis.sweep;

import org.jspecify.annotations.NullMarked;
