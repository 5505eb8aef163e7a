/** The window, with real clicks and keys on a screen without display. */
@NullMarked
package dryfloor.app.view;

import org.jspecify.annotations.NullMarked;
