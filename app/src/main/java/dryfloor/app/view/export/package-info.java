/**
 * Pictures of the elevation as pixels. Files that need no screen are written by {@code
 * dryfloor.app.drawing} and {@code dryfloor.app.report}.
 */
@NullMarked
package dryfloor.app.view.export;

import org.jspecify.annotations.NullMarked;
