/**
 * The window while somebody learns: asks, lets guess, and only then shows what happens. What is
 * asked and what a guess is worth is decided in {@code dryfloor.app.view.learn}.
 */
@NullMarked
package dryfloor.app.view.lesson;

import org.jspecify.annotations.NullMarked;
