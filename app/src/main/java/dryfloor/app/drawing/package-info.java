/**
 * The picture of the building: a side elevation, true to scale in height and in the width of every
 * vessel; where things stand side by side is our own arrangement, because a drawing file does not
 * say it.
 *
 * <p>Three steps, each a plain value that the next one takes: {@link dryfloor.app.drawing.Plan}
 * says where everything is, in metres; {@link dryfloor.app.drawing.Elevation} puts it on paper with
 * levels and labels, as {@link dryfloor.app.drawing.Shape}s; {@link dryfloor.app.drawing.SvgWriter}
 * writes those down. Any other surface can draw the same shapes. What the picture says in words
 * comes from outside, in a {@link dryfloor.app.drawing.Scene}.
 */
@NullMarked
package dryfloor.app.drawing;

import org.jspecify.annotations.NullMarked;
