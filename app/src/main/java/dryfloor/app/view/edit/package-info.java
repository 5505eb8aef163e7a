/**
 * Changes of a drawing, each a function from one drawing to the next: heights that are dragged,
 * values that are typed, things that are added, copied and taken away. Knows no screen; nothing
 * here keeps a drawing for longer than one movement of the hand.
 */
@NullMarked
package dryfloor.app.view.edit;

import org.jspecify.annotations.NullMarked;
