/** What a window works on, without any window. */
@NullMarked
package dryfloor.app.view.work;

import org.jspecify.annotations.NullMarked;
