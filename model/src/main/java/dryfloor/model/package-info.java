/** To be told. */
@NullMarked
package dryfloor.model;

import org.jspecify.annotations.NullMarked;
