/**
 * Complete installations worked out by hand, volume by volume, and what a failure leaves behind in
 * them.
 */
@NullMarked
package dryfloor.analysis.outcome;

import org.jspecify.annotations.NullMarked;
