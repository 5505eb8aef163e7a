/**
 * What a window works on: the drawing with its past, what is known about its failures, which of
 * them is looked at and at which moment. Knows no window and no picture: it can be tested without
 * any.
 */
@NullMarked
package dryfloor.app.view.work;

import org.jspecify.annotations.NullMarked;
