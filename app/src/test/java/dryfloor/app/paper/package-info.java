/** What papers say, as sentences and numbers, and that nothing written by users gets loose. */
@NullMarked
package dryfloor.app.paper;

import org.jspecify.annotations.NullMarked;
