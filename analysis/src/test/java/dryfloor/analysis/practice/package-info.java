/** What rules have against drawings. */
@NullMarked
package dryfloor.analysis.practice;

import org.jspecify.annotations.NullMarked;
