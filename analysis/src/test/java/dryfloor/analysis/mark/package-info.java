/** That marks say what a power loss does. */
@NullMarked
package dryfloor.analysis.mark;

import org.jspecify.annotations.NullMarked;
