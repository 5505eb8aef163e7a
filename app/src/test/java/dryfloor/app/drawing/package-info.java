/** Tests of the picture. */
@NullMarked
package dryfloor.app.drawing;

import org.jspecify.annotations.NullMarked;
