package dryfloor.app.command;

import dryfloor.app.report.Ink;

/** What is said when the program itself fails, which says nothing about the drawing. */
final class Breakdown {

  private static final long MEGABYTE = 1024 * 1024;

  /** Made beforehand: when it is needed, there may be no room to make it. */
  static final String NO_ROOM =
      "this needs more memory than the program may take, which is about "
          + Runtime.getRuntime().maxMemory() / MEGABYTE
          + " MB";

  /** Likewise, with what helps. */
  static final String OUT_OF_MEMORY =
      "dryfloor: no answer: "
          + NO_ROOM
          + ".\n"
          + "What helps: give it more, as in DRYFLOOR_MEMORY=2g dryfloor ...; ask with --threads 1;\n"
          + "ask for one failure alone with 'dryfloor tell'; or split the drawing into parts that\n"
          + "share no water. The drawing may be sound.\n";

  private Breakdown() {}

  static String of(Throwable failure, Ink ink) {
    return "dryfloor: no answer because of an error in the program: "
        + ink.fit(reason(failure))
        + "\nThe drawing may be sound. "
        + CommandLines.TRACE
        + "=1 shows where the error arose.\n";
  }

  private static String reason(Throwable failure) {
    return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
  }
}
