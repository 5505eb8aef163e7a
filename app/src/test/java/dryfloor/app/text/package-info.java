/** Tests of plain text. */
@NullMarked
package dryfloor.app.text;

import org.jspecify.annotations.NullMarked;
