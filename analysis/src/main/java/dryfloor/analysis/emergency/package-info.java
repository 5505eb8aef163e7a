/**
 * What somebody who stands in front of a failing installation does first: {@link
 * dryfloor.analysis.emergency.FirstSteps} finds it from the way that the water took. Values only;
 * reports choose the words and the cautions.
 */
@NullMarked
package dryfloor.analysis.emergency;

import org.jspecify.annotations.NullMarked;
