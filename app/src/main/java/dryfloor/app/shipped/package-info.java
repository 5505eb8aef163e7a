/**
 * Drawings that come with the program: templates to begin with and some of the examples. Only what
 * is inside the program is found here, never the user's files.
 */
@NullMarked
package dryfloor.app.shipped;

import org.jspecify.annotations.NullMarked;
