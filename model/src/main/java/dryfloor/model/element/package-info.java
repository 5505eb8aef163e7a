/**
 * The things an installation is made of: {@link dryfloor.model.element.Element} lists the kinds.
 * Places hold water (vessels, floors) or stand for the outside (supplies, drains); runs and weirs
 * lead from place to place; circuits and controls decide what moves.
 */
@NullMarked
package dryfloor.model.element;

import org.jspecify.annotations.NullMarked;
