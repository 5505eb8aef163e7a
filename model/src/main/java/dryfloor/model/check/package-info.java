/**
 * Whether a drawing makes sense: {@link dryfloor.model.check.DrawingCheck} finds what can't be
 * built or would not be what was meant. Geometry and references only; nothing here knows how water
 * flows or how the file spells things.
 */
@NullMarked
package dryfloor.model.check;

import org.jspecify.annotations.NullMarked;
