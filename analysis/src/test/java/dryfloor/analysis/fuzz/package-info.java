/**
 * Extreme drawings by machine: {@link dryfloor.analysis.fuzz.EngineFuzzTest} changes numbers of the
 * shipped drawings far beyond what anybody would build, keeps what the reader and its checks let
 * pass, and looks whether the engine's answers are possible at all. Whether they are right is for
 * the tests by hand and the second opinion in {@code dryfloor.analysis.plain}.
 */
@NullMarked
package dryfloor.analysis.fuzz;

import org.jspecify.annotations.NullMarked;
