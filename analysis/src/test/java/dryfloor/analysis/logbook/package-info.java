/**
 * Files in the test resources that keep what takes hours to find out, with the day on which it was
 * found. How to write and read such a file lives here; what is found, and what it means, stays with
 * those who find it.
 */
@NullMarked
package dryfloor.analysis.logbook;

import org.jspecify.annotations.NullMarked;
