/**
 * Guessing what a failure does before seeing it: exercises, guesses, and what a guess is worth.
 * Knows no screen and computes nothing about water: the truth is an outcome that the analysis gave.
 */
@NullMarked
package dryfloor.app.view.learn;

import org.jspecify.annotations.NullMarked;
