/** Time as it is shown. */
@NullMarked
package dryfloor.app.view.time;

import org.jspecify.annotations.NullMarked;
