/** Changes of drawings, without any screen. */
@NullMarked
package dryfloor.app.view.edit;

import org.jspecify.annotations.NullMarked;
