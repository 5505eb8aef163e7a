/** That first steps go back along the water's way. */
@NullMarked
package dryfloor.analysis.emergency;

import org.jspecify.annotations.NullMarked;
