package dryfloor.app.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Draws. */
@Command(name = "draw")
public final class DrawCommand implements Callable<Integer> {
  /** A command at this workplace. */
  public DrawCommand(Workplace workplace) {
    workplace.surface().answer("");
  }

  @Override
  public Integer call() {
    return 0;
  }
}
