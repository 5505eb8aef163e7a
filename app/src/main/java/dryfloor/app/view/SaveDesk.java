package dryfloor.app.view;

import dryfloor.app.view.file.DrawingFile;
import dryfloor.app.view.file.Opening;
import dryfloor.app.view.file.Saving;
import dryfloor.app.view.panel.Notices.Choice;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.Optional;

/** Saves and closes for one window; what has to be asked is asked above the drawing. */
final class SaveDesk {

  private static final String NOTICE = "saving";

  private final Program program;
  private final DrawingWindow window;
  private boolean saving;

  /** Asked for while another save was not finished. */
  private Optional<Runnable> next = Optional.empty();

  /** How to save. */
  private interface Way {
    Saving save(DrawingFile file, Installation drawing);
  }

  SaveDesk(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  /** Saves where the file is, or asks where. */
  void save() {
    save(SaveDesk::nothingMore);
  }

  private void save(Runnable then) {
    if (window.file().path().isEmpty()) {
      saveAs(then);
    } else {
      run(DrawingFile::save, then);
    }
  }

  /** Asks where to save. */
  void saveAs() {
    saveAs(SaveDesk::nothingMore);
  }

  private void saveAs(Runnable then) {
    FileQuestions.Kind kind = FileQuestions.Kind.DRAWING;
    String name = SuggestedName.of(window, "", kind);
    program
        .questions()
        .toWrite(window.stage(), kind, name, window.file().path())
        .ifPresent(path -> saveAs(path, then));
  }

  private void saveAs(Path path, Runnable then) {
    if (program.isShownElsewhere(path, window)) {
      window.tell("file.shownElsewhere", path.toString());
    } else {
      run((file, drawing) -> file.saveAs(drawing, path.toAbsolutePath().normalize()), then);
    }
  }

  /** One save after the other: each has to know what the one before it wrote. */
  private void run(Way way, Runnable then) {
    if (saving) {
      next = Optional.of(() -> run(way, then));
      return;
    }
    saving = true;
    DrawingFile file = window.file();
    Installation drawing = window.drawing();
    program
        .files()
        .run(
            () -> way.save(file, drawing),
            result -> {
              saving = false;
              tell(result, then);
              Optional<Runnable> waiting = next;
              next = Optional.empty();
              waiting.ifPresent(Runnable::run);
            });
  }

  private void tell(Saving result, Runnable then) {
    switch (result) {
      case Saving.Saved saved -> {
        window.notices().dismiss(NOTICE);
        window.notices().dismiss("file-changed");
        window.isNow(saved.file());
        saved.file().path().ifPresent(this::lookWhetherItOpensAgain);
        then.run();
      }
      case Saving.ChangedByOthers changed -> askOfOthers(changed.path(), then);
      case Saving.Failed failed ->
          window
              .notices()
              .tell(
                  NOTICE,
                  Words.of(
                      "file.failed",
                      failed.path(),
                      Words.of("file.trouble." + failed.trouble(), failed.detail())),
                  new Choice(Words.of("file.saveAs"), () -> saveAs(then)));
    }
  }

  /** A drawing in the middle of a change may have mistakes that its file can't be read with. */
  private void lookWhetherItOpensAgain(Path path) {
    program
        .files()
        .run(
            () -> Opening.of(path),
            opening -> {
              if (opening instanceof Opening.Refused refused) {
                window
                    .notices()
                    .list(
                        NOTICE,
                        Words.of("file.savedFaulty", path, refused.problems().size()),
                        refused.problems());
              }
            });
  }

  private void askOfOthers(Path path, Runnable then) {
    window
        .notices()
        .ask(
            NOTICE,
            Words.of("file.changedSince", path),
            new Choice(Words.of("file.saveAs"), () -> saveAs(then)),
            new Choice(Words.of("file.saveOver"), () -> saveAs(path, then)),
            new Choice(Words.of("file.load"), () -> window.desk().load(path)),
            new Choice(Words.of("file.goOn"), SaveDesk::nothingMore));
  }

  /** Closes the window; asks first where something is unsaved. */
  void close() {
    window.mending().leave(this::closeDrawing);
  }

  private void closeDrawing() {
    if (!window.hasUnsaved()) {
      window.closeNow();
      return;
    }
    window.toFront();
    window.showDrawing();
    window
        .notices()
        .ask(
            "closing",
            Words.of("file.closing", window.drawing().name()),
            new Choice(Words.of("file.saveAndClose"), () -> save(this::close)),
            new Choice(Words.of("file.closeUnsaved"), window::closeNow),
            new Choice(Words.of("file.goOn"), SaveDesk::nothingMore));
  }

  private static void nothingMore() {}
}
