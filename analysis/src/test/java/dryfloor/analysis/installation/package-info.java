/**
 * Words for tests: {@link dryfloor.analysis.installation.Plan} draws an installation in a few
 * lines, {@link dryfloor.analysis.installation.Trial} lets something fail in it, and {@link
 * dryfloor.analysis.installation.WaterAssert} says where the water is. Small named installations
 * that several tests share live here too; no test does.
 */
@NullMarked
package dryfloor.analysis.installation;

import org.jspecify.annotations.NullMarked;
