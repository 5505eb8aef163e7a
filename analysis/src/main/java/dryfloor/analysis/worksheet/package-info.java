/**
 * The failure-mode worksheet, in the form that IEC 60812:2018 describes, as values: {@link
 * dryfloor.analysis.worksheet.Worksheet} is the way in. How grave an effect is follows from the
 * computed outcome by a scale that the user may change; how often a failure happens is nobody's
 * guess here and stays open. No words: reports choose them.
 */
@NullMarked
package dryfloor.analysis.worksheet;

import org.jspecify.annotations.NullMarked;
