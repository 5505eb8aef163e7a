/**
 * What stands round the picture: the list of failures, the story, the line of time. Each shows a
 * {@code Work} and changes it; none knows another.
 */
@NullMarked
package dryfloor.app.view.panel;

import org.jspecify.annotations.NullMarked;
