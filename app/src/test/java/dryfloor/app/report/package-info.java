/** Tests of the words of answers. */
@NullMarked
package dryfloor.app.report;

import org.jspecify.annotations.NullMarked;
