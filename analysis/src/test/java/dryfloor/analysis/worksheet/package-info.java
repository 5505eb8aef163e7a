/** That the worksheet grades what was computed, and nothing else. */
@NullMarked
package dryfloor.analysis.worksheet;

import org.jspecify.annotations.NullMarked;
