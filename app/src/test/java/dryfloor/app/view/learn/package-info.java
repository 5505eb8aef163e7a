/** Exercises and what guesses are worth. */
@NullMarked
package dryfloor.app.view.learn;

import org.jspecify.annotations.NullMarked;
