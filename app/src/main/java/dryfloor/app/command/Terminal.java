package dryfloor.app.command;

import dryfloor.app.report.Ink;
import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/** Finds out how the program's own output may look: colours and signs only where they show. */
public final class Terminal {

  /** The launcher knows which outputs are terminals; Java only knows of all of them together. */
  private static final String SHOWN = "dryfloor.terminal";

  private Terminal() {}

  /** The program's own output. */
  public static Surface surface(PrintStream out, PrintStream err, Map<String, String> environment) {
    boolean colour = environment.getOrDefault("NO_COLOR", "").isEmpty() && !dumb(environment);
    return new Surface(
        new PrintWriter(out, false, out.charset()),
        new PrintWriter(err, false, err.charset()),
        new Ink(colour && isTerminal("out"), manyCharacters(out.charset())),
        new Ink(colour && isTerminal("err"), manyCharacters(err.charset())),
        isTerminal("err") && !dumb(environment));
  }

  private static boolean manyCharacters(Charset charset) {
    return charset.equals(StandardCharsets.UTF_8);
  }

  private static boolean dumb(Map<String, String> environment) {
    return environment.getOrDefault("TERM", "").equals("dumb");
  }

  private static boolean isTerminal(String output) {
    Optional<String> told = Optional.ofNullable(System.getProperty(SHOWN));
    return told.map(outputs -> outputs.contains(output))
        .orElseGet(
            () -> Optional.ofNullable(System.console()).map(Console::isTerminal).orElse(false));
  }
}
