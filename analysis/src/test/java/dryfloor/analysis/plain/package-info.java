/**
 * The plain simulator, a second opinion on the engine: the same laws, taken from the design and
 * from textbooks and written anew in the simplest way, with small steps of time and trial for every
 * unknown. It is slow and knows nothing of {@code hydraulics}, {@code network} and {@code
 * simulation}; of the main code it uses the drawing, the failures (what each changes) and the
 * values of an outcome.
 *
 * <p>Coefficients that the trade has no single source for (loss of an elbow, discharge of a lip)
 * and criteria that neither the design nor a source decides (when a drain comes to run full, which
 * hole breaks a siphon, the slope of a pump curve between and beyond its points, what a burst wall
 * leaves open) are the same as the engine's: a difference there would say nothing about either
 * program. The code is not shared. Salt is left out but for the density and viscosity of the mean.
 *
 * <p>No test of the engine alone belongs here, and nothing clever.
 */
@NullMarked
package dryfloor.analysis.plain;

import org.jspecify.annotations.NullMarked;
