/**
 * The program: {@link dryfloor.app.Main} starts it. {@code command} holds the commands, {@code
 * report} the words and tables, {@code drawing} the picture of the building. Nothing here computes
 * where water goes; that is asked of {@code dryfloor.analysis}.
 */
@NullMarked
package dryfloor.app;

import org.jspecify.annotations.NullMarked;
