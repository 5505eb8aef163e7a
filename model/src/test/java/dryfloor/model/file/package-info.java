/** Tests of reading and writing installation files: what is right, and every way to be wrong. */
@NullMarked
package dryfloor.model.file;

import org.jspecify.annotations.NullMarked;
