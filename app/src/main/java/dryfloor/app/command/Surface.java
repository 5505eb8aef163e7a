package dryfloor.app.command;

import dryfloor.app.report.Ink;

/**
 * Where output goes and how it may look there.
 *
 * @param out for answers
 * @param err for complaints and progress
 * @param ink of the answers
 * @param errInk of the complaints
 * @param progressShows whether somebody watches the progress on a terminal
 */
public record Surface(Output out, Output err, Ink ink, Ink errInk, boolean progressShows) {

  void answer(String text) {
    out.print(text);
  }

  void complain(String text) {
    err.print(text);
  }
}
