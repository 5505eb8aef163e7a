package dryfloor.app.view;

import dryfloor.app.view.file.DrawingFile;
import dryfloor.app.view.file.FaultyText;
import dryfloor.app.view.file.Opening;
import dryfloor.app.view.panel.Notices.Choice;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Opens files for one window; what is wrong with them is told above the drawing. */
final class FileDesk {

  private final Program program;
  private final DrawingWindow window;

  FileDesk(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  /** Asks for a file and opens it. */
  void open(boolean inNewWindow) {
    program
        .questions()
        .toOpen(window.stage(), window.file().path())
        .ifPresent(path -> open(path, inNewWindow));
  }

  /** Opens files that were dragged here: one in this window, each other in one of its own. */
  void receive(List<Path> paths) {
    for (int i = 0; i < paths.size(); i++) {
      open(paths.get(i), i > 0);
    }
  }

  /** Opens a file; not in this window if that holds something unsaved. */
  void open(Path path, boolean inNewWindow) {
    if (!program.isShown(path)) {
      program.files().run(() -> Opening.of(path), opening -> show(opening, inNewWindow));
    }
  }

  /** Looks whether others have written the file since, and says so. */
  void lookForOthers() {
    DrawingFile file = window.file();
    program
        .files()
        .run(
            file::isChangedByOthers,
            changed -> {
              if (changed && file.equals(window.file())) {
                tellChangedByOthers(file);
              }
            });
  }

  private void tellChangedByOthers(DrawingFile file) {
    file.path()
        .ifPresent(
            path ->
                window
                    .notices()
                    .tell(
                        "file-changed",
                        Words.of("file.changed", path),
                        new Choice(Words.of("file.load"), () -> load(path))));
  }

  /** Shows what others have written; the drawing as it was here stays in a window of its own. */
  void load(Path path) {
    program
        .files()
        .run(
            () -> Opening.of(path),
            opening -> {
              switch (opening) {
                case Opening.Refused refused -> tellRefused(refused);
                case Opening.Opened opened -> {
                  if (window.hasUnsaved()) {
                    program.newWindow(
                        new Opening.Opened(
                            window.file().withoutPath(), window.drawing(), List.of()));
                  }
                  show(opened);
                }
              }
            });
  }

  private void show(Opening opening, boolean inNewWindow) {
    switch (opening) {
      case Opening.Refused refused -> tellRefused(refused);
      case Opening.Opened opened -> {
        if (inNewWindow) {
          program.newWindow(opened);
        } else {
          showOpened(opened);
        }
      }
    }
  }

  /** Shows a drawing; not in this window if that holds something unsaved. */
  void showOpened(Opening.Opened opened) {
    if (window.hasUnsaved()) {
      program.newWindow(opened);
    } else {
      show(opened);
    }
  }

  private void show(Opening.Opened opened) {
    window.show(opened.file(), opened.drawing());
    tellWarnings(opened);
  }

  /** Lists what is wrong with a file that is no drawing. */
  void tellRefused(Opening.Refused refused) {
    String words = Words.of("file.refused", refused.path(), refused.problems().size());
    refused
        .text()
        .ifPresentOrElse(
            text -> tellToBeMended(words, refused.problems(), text),
            () -> window.notices().list("file-refused", words, refused.problems()));
  }

  /** A click on a problem goes to its place in the text. */
  private void tellToBeMended(String words, List<Problem> problems, FaultyText text) {
    window
        .notices()
        .list(
            "file-refused",
            words,
            problems,
            problem -> {
              window.notices().dismiss("file-refused");
              mend(text, Optional.of(problem));
            },
            new Choice(Words.of("file.mend"), () -> mend(text, Optional.empty())));
  }

  private void mend(FaultyText text, Optional<Problem> first) {
    window.mending().begin(text, first);
  }

  /** Lists what should be looked at in a drawing; a click goes to what it is about. */
  void tellWarnings(Opening.Opened opened) {
    window.notices().dismiss("file-refused");
    window.notices().dismiss("file-changed");
    if (opened.warnings().isEmpty()) {
      window.notices().dismiss("file-warnings");
    } else {
      list(
          "file-warnings",
          "file.warnings",
          opened.file().path().orElse(Path.of(Words.of("file.untitled"))),
          opened.warnings());
    }
  }

  private void list(String id, String key, Path path, List<Problem> problems) {
    window.notices().list(id, Words.of(key, path, problems.size()), problems, window::goTo);
  }
}
