/**
 * The elevation on the screen: the shapes of {@code dryfloor.app.drawing}, painted, zoomed and
 * moved. What they show comes from outside.
 */
@NullMarked
package dryfloor.app.view.picture;

import org.jspecify.annotations.NullMarked;
