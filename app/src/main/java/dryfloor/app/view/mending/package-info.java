/**
 * The window while the text of a file is mended that is no drawing yet. May know the toolkit, the
 * panels and what lies on the disk; what it leads to, it leaves to others.
 */
@NullMarked
package dryfloor.app.view.mending;

import org.jspecify.annotations.NullMarked;
