/** Drawings on the disk, what is kept of unsaved changes, and what is remembered. */
@NullMarked
package dryfloor.app.view.file;

import org.jspecify.annotations.NullMarked;
