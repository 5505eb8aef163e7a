/**
 * Installations by chance and what must hold for every one of them. {@link
 * dryfloor.analysis.generated.Building} is a description that reads as a sentence and shrinks to a
 * short one; {@link dryfloor.analysis.generated.Buildings} makes them; the classes called
 * PropertiesTest say what must hold. Nothing here knows what an answer should be: sums on paper
 * belong to {@code outcome}.
 */
@NullMarked
package dryfloor.analysis.generated;

import org.jspecify.annotations.NullMarked;
