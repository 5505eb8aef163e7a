package dryfloor.app.view;

import dryfloor.app.view.file.FaultyText;
import dryfloor.app.view.file.Journal;
import dryfloor.app.view.file.Journals;
import dryfloor.app.view.file.Unsaved;
import dryfloor.app.view.panel.Notices.Choice;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Offers the unsaved changes that a program left behind when it died. */
final class LeftBehind {

  private final Program program;
  private final Journals journals;
  private int offered;

  LeftBehind(Program program, Journals journals) {
    this.program = program;
    this.journals = journals;
  }

  void offerIn(DrawingWindow window) {
    try {
      for (Journal journal : journals.leftBehind()) {
        Optional<Unsaved> unsaved = journal.read();
        if (unsaved.isPresent()) {
          offer(window, journal, unsaved.get());
        } else {
          journal.close();
        }
      }
    } catch (IOException e) {
      window.tell("journal.trouble", String.valueOf(e));
    }
  }

  private void offer(DrawingWindow window, Journal journal, Unsaved unsaved) {
    String id = "left-behind-" + offered++;
    String name = unsaved.path().map(Path::toString).orElseGet(() -> Words.of("file.untitled"));
    Optional<Installation> drawing = unsaved.drawing();
    String text =
        drawing.isPresent()
            ? Words.of("journal.found", name)
            : Words.of("journal.foundFaulty", name, journal.file());
    Choice discard = new Choice(Words.of("journal.discard"), () -> discard(window, journal));
    if (drawing.isPresent()) {
      Choice recover =
          new Choice(
              Words.of("journal.recover"),
              () -> program.newWindow(unsaved.file(), drawing.get(), journal));
      window.notices().ask(id, text, recover, discard);
    } else {
      Choice mend =
          new Choice(
              Words.of("file.mend"), () -> window.mending().goOn(FaultyText.of(unsaved), journal));
      window.notices().ask(id, text, mend, discard);
    }
  }

  private static void discard(DrawingWindow window, Journal journal) {
    try {
      journal.clear();
      journal.close();
    } catch (IOException e) {
      window.tell("journal.trouble", String.valueOf(e));
    }
  }
}
