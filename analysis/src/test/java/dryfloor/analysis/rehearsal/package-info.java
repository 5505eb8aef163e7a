/** That rehearsals are safe, and that a cause is found again which was put in. */
@NullMarked
package dryfloor.analysis.rehearsal;

import org.jspecify.annotations.NullMarked;
