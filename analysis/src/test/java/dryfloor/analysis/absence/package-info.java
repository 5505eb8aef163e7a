/** What becomes of installations that are left alone. */
@NullMarked
package dryfloor.analysis.absence;

import org.jspecify.annotations.NullMarked;
