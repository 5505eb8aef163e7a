package dryfloor.app.command;

import dryfloor.app.report.Ink;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/** Finds out how the program's own output may look: colours and signs only where they show. */
public final class Terminal {

  /** The launcher knows which outputs are terminals; Java only knows of all of them together. */
  private static final String SHOWN = "dryfloor.terminal";

  /** The launcher knows, too, whether another program reads the answer. */
  private static final String PIPED = "dryfloor.piped";

  private Terminal() {}

  /** The program's own output. */
  public static Surface surface(Map<String, String> environment) {
    boolean colour = environment.getOrDefault("NO_COLOR", "").isEmpty() && !dumb(environment);
    Charset outSet = System.out.charset();
    Charset errSet = System.err.charset();
    return new Surface(
        output(FileDescriptor.out, outSet, Boolean.getBoolean(PIPED)),
        output(FileDescriptor.err, errSet, false),
        new Ink(colour && isTerminal("out"), manyCharacters(outSet)),
        new Ink(colour && isTerminal("err"), manyCharacters(errSet)),
        isTerminal("err") && !dumb(environment));
  }

  /** Not System.out, which says of a failure only that there was one. */
  private static Output output(FileDescriptor descriptor, Charset charset, boolean piped) {
    return new Output(new OutputStreamWriter(new FileOutputStream(descriptor), charset), piped);
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
