/**
 * The commands, one class each. A command reads what it is asked for, asks the analysis through
 * {@link dryfloor.app.command.Analyst}, hands the answer to {@code report} or {@code drawing} and
 * returns an {@link dryfloor.app.command.ExitCode}. No words of answers and no shapes are made
 * here.
 */
@NullMarked
package dryfloor.app.command;

import org.jspecify.annotations.NullMarked;
