/** To be told. */
@NullMarked
package dryfloor.app;

import org.jspecify.annotations.NullMarked;
