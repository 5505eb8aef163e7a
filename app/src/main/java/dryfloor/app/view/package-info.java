/**
 * The desktop program: one window for each drawing. It puts together the parts below it and gives
 * them their words; it computes nothing.
 */
@NullMarked
package dryfloor.app.view;

import org.jspecify.annotations.NullMarked;
