/** Tests of the program as a whole. */
@NullMarked
package dryfloor.app;

import org.jspecify.annotations.NullMarked;
