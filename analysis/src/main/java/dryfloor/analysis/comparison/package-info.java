/**
 * Two drawings, or two versions of one, failure by failure: {@link
 * dryfloor.analysis.comparison.Changes} tells what ends better, worse and the same, and by how
 * much. Values only.
 */
@NullMarked
package dryfloor.analysis.comparison;

import org.jspecify.annotations.NullMarked;
