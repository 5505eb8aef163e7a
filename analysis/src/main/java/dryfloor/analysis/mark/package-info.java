/**
 * Marks for the glass: {@link dryfloor.analysis.mark.Marks} says where the water of each vessel
 * stands in normal operation and after a power loss, and how high it may stand while everything
 * runs. Values only.
 */
@NullMarked
package dryfloor.analysis.mark;

import org.jspecify.annotations.NullMarked;
