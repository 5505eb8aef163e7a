/**
 * Broken files by machine: {@link dryfloor.model.fuzz.ReaderFuzzTest} mutates every sound file of
 * the project, byte by byte and as a tree, and keeps what the reader answers in a new way as a
 * start for more. Nothing here knows what would be right in a file; that is said by hand in the
 * tests of {@code dryfloor.model.file}.
 */
@NullMarked
package dryfloor.model.fuzz;

import org.jspecify.annotations.NullMarked;
