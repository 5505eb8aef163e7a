/** Tests of the commands. */
@NullMarked
package dryfloor.app.command;

import org.jspecify.annotations.NullMarked;
