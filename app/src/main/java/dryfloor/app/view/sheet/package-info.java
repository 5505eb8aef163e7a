/**
 * Forms for what is drawn: every field of the chosen element with what is wrong with it in place,
 * and the list of all that is to be looked at. What a change comes to is decided in {@code
 * dryfloor.app.view.edit}.
 */
@NullMarked
package dryfloor.app.view.sheet;

import org.jspecify.annotations.NullMarked;
