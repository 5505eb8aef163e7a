/** Plain text, whatever it says and wherever it is shown. */
@NullMarked
package dryfloor.app.text;

import org.jspecify.annotations.NullMarked;
