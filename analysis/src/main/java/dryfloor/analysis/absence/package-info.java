/**
 * Nobody there for so many days: when the first floor gets wet after each failure, the worst by
 * then, and what sensors and automatic shut-offs are worth meanwhile, or spoil. {@link
 * dryfloor.analysis.absence.Absences} is the way in. Asks the sweep; nothing about hydraulics here.
 */
@NullMarked
package dryfloor.analysis.absence;

import org.jspecify.annotations.NullMarked;
