/** Two failures at once: what they do together, and that the short way to know it is right. */
@NullMarked
package dryfloor.analysis.together;

import org.jspecify.annotations.NullMarked;
