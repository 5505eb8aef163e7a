/** Tests of what can go wrong, on small installations built in code. */
@NullMarked
package dryfloor.analysis.failure;

import org.jspecify.annotations.NullMarked;
