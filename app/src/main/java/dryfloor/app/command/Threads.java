package dryfloor.app.command;

import picocli.CommandLine.Option;

/** The option of every command that works for long. */
final class Threads {

  @Option(
      names = "--threads",
      paramLabel = "N",
      converter = ThreadCount.class,
      description = "Work on so many things at once. Default: as many as the machine allows.")
  private int count = Math.min(ThreadCount.MOST, Runtime.getRuntime().availableProcessors());

  int count() {
    return count;
  }
}
