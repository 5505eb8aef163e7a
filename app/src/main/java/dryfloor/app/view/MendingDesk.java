package dryfloor.app.view;

import dryfloor.app.view.file.FaultyText;
import dryfloor.app.view.file.Journal;
import dryfloor.app.view.file.JournalKeeper;
import dryfloor.app.view.file.Opening;
import dryfloor.app.view.mending.Mender;
import dryfloor.app.view.mending.MendingView;
import dryfloor.model.file.Problem;
import dryfloor.model.file.Reading;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;

/** Lets the text of a faulty file be mended in a window; its drawing waits behind it as it is. */
final class MendingDesk {

  private final Program program;
  private final DrawingWindow window;
  private Optional<MendingView> mending = Optional.empty();

  MendingDesk(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  /** Begins with a problem, or with all of them. */
  void begin(FaultyText text, Optional<Problem> first) {
    begin(text, first, program::beginJournal);
  }

  /** Goes on with what a program left behind when it died. */
  void goOn(FaultyText text, Journal journal) {
    begin(text, Optional.empty(), () -> journal);
  }

  private void begin(FaultyText text, Optional<Problem> first, Program.JournalSource journal) {
    leave(
        () -> {
          MendingView view = new MendingView(text, new Work(keep(journal)));
          mending = Optional.of(view);
          window.showInstead(view);
          view.applyCss();
          first.ifPresentOrElse(view::goTo, view::focusProblems);
        });
  }

  /** Does something once nothing is mended any more; asks first where something is unsaved. */
  void leave(Runnable then) {
    mending.ifPresentOrElse(
        view ->
            view.leave(
                () -> {
                  view.finish();
                  then.run();
                }),
        then);
  }

  /** Ends what is being mended, whatever is unsaved. */
  void giveUp() {
    mending.ifPresent(MendingView::finish);
  }

  private Optional<JournalKeeper> keep(Program.JournalSource source) {
    try {
      return Optional.of(new JournalKeeper(source.get(), this::tellLater));
    } catch (IOException e) {
      tell(e);
      return Optional.empty();
    }
  }

  private void tellLater(Exception trouble) {
    Platform.runLater(() -> tell(trouble));
  }

  private void tell(Exception trouble) {
    window.tell("journal.trouble", String.valueOf(trouble));
  }

  /** What is done with one text. */
  private final class Work implements Mender {

    private final Optional<JournalKeeper> journal;

    Work(Optional<JournalKeeper> journal) {
      this.journal = journal;
    }

    @Override
    public void read(String text, Consumer<Reading> done) {
      program.files().run(() -> FaultyText.read(text), done);
    }

    @Override
    public void changed(FaultyText file, String text) {
      journal.ifPresent(keeper -> keeper.changed(() -> file.unsaved(text)));
    }

    @Override
    public void write(FaultyText file, String text, Consumer<FaultyText.Written> done) {
      program.files().run(() -> file.write(text), done);
    }

    @Override
    public void nothingUnsaved() {
      journal.ifPresent(JournalKeeper::saved);
    }

    @Override
    public void open(Opening.Opened opened) {
      mending.ifPresent(MendingView::finish);
      window.desk().showOpened(opened);
    }

    @Override
    public void leave() {
      nothingUnsaved();
      journal.ifPresent(JournalKeeper::close);
      mending = Optional.empty();
      window.showDrawing();
    }
  }
}
