/** What holds for every answer whatever the drawing: balances, order, threads, repetition. */
@NullMarked
package dryfloor.analysis.sweep;

import org.jspecify.annotations.NullMarked;
