/**
 * Drawings on the disk: opening, saving, what is kept of unsaved changes, what two windows do to
 * one file, and what the program remembers between two starts. Knows no screen; every answer is a
 * value, put into words elsewhere.
 */
@NullMarked
package dryfloor.app.view.file;

import org.jspecify.annotations.NullMarked;
