/**
 * Time as it is shown: a scale that holds seconds and days alike, the line that is dragged along,
 * and what plays. The scale and the pace know no toolkit.
 */
@NullMarked
package dryfloor.app.view.time;

import org.jspecify.annotations.NullMarked;
