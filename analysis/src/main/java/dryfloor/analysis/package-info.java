/** To be told. */
@NullMarked
package dryfloor.analysis;

import org.jspecify.annotations.NullMarked;
