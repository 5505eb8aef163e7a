package dryfloor.app.view;

import dryfloor.app.view.file.DrawingFile;
import dryfloor.app.view.file.JournalKeeper;
import dryfloor.app.view.file.WindowState;
import dryfloor.app.view.panel.LongWorkPanel;
import dryfloor.app.view.panel.Notices;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** One window with one drawing and its file. To be used by the screen's thread alone. */
final class DrawingWindow {

  private final Program program;
  private final Stage stage;
  private final Notices notices = new Notices();
  private final FileDesk desk;
  private final SaveDesk saves;
  private final MendingDesk mending;
  private final Optional<JournalKeeper> journal;

  private DrawingFile file;
  private Work work;
  private MainWindow main;

  DrawingWindow(
      Program program,
      Stage stage,
      DrawingFile file,
      Installation drawing,
      Program.JournalSource journal) {
    this.program = program;
    this.stage = stage;
    this.file = file;
    this.journal = keep(journal);
    desk = new FileDesk(program, this);
    saves = new SaveDesk(program, this);
    mending = new MendingDesk(program, this);
    work = begin(drawing);
    main = new MainWindow(work, program.looks());
    stage.setScene(new Scene(main.root(), stage.getWidth(), stage.getHeight()));
    furnish();
    FileDrop.onto(stage.getScene(), desk::receive);
    stage.setOnCloseRequest(
        request -> {
          request.consume();
          saves.close();
        });
    stage
        .focusedProperty()
        .addListener(
            (focused, before, now) -> {
              if (now) {
                desk.lookForOthers();
              }
            });
  }

  private Optional<JournalKeeper> keep(Program.JournalSource source) {
    try {
      return Optional.of(
          new JournalKeeper(
              source.get(),
              failure ->
                  Platform.runLater(() -> tell("journal.trouble", String.valueOf(failure)))));
    } catch (IOException e) {
      tell("journal.trouble", String.valueOf(e));
      return Optional.empty();
    }
  }

  /** Shows another drawing in place of the present one. */
  void show(DrawingFile other, Installation drawing) {
    List<Double> dividers = dividers();
    work.close();
    file = other;
    work = begin(drawing);
    main = new MainWindow(work, program.looks());
    stage.getScene().setRoot(main.root());
    WindowPlace.divide(main.parts(), dividers);
    furnish();
  }

  /** What changed is told against what the file holds, where that is known. */
  private Work begin(Installation drawing) {
    Work begun = new Work(drawing, Platform::runLater, begin -> OncePainted.run(stage, begin));
    file.saved().filter(saved -> !saved.equals(drawing)).ifPresent(begun::markSaved);
    return begun;
  }

  /** Adds to the drawing's own window what concerns its file. */
  private void furnish() {
    main.menuBar().getMenus().addFirst(FileMenu.of(program, this));
    main.menuBar().getMenus().addAll(PapersMenu.of(program, this), LearnMenu.of(program, this));
    main.top().getChildren().addAll(new LongWorkPanel(work), notices);
    work.installation().addListener((drawing, before, now) -> changed());
    work.answers().addListener((answers, before, now) -> entitle());
    file.path().ifPresentOrElse(path -> program.shows(this, path), () -> program.showsNoFile(this));
    // A field for text would keep the keys for undo to itself; without style nothing can be chosen.
    main.root().applyCss();
    main.focusPicture();
    changed();
  }

  /** To be told when the file holds something else than before, or is another one. */
  void isNow(DrawingFile other) {
    boolean moved = !other.path().equals(file.path());
    file = other;
    other.saved().filter(saved -> !saved.equals(work.saved())).ifPresent(work::markSaved);
    if (moved) {
      other.path().ifPresent(path -> program.shows(this, path));
    }
    changed();
  }

  private void changed() {
    entitle();
    if (hasUnsaved()) {
      journal.ifPresent(keeper -> keeper.changed(file, drawing()));
    } else {
      journal.ifPresent(JournalKeeper::saved);
    }
  }

  private void entitle() {
    String name =
        file.path()
            .map(path -> String.valueOf(path.getFileName()))
            .orElseGet(() -> Words.of("file.untitled"));
    String key = hasUnsaved() ? "file.title.unsaved" : "file.title";
    stage.setTitle(Words.of(key, drawing().name(), name));
  }

  boolean hasUnsaved() {
    return file.hasUnsaved(drawing());
  }

  Installation drawing() {
    return work.installation().get();
  }

  DrawingFile file() {
    return file;
  }

  Work work() {
    return work;
  }

  FileDesk desk() {
    return desk;
  }

  SaveDesk saves() {
    return saves;
  }

  MendingDesk mending() {
    return mending;
  }

  Notices notices() {
    return notices;
  }

  Stage stage() {
    return stage;
  }

  MainWindow main() {
    return main;
  }

  /** Says something of this key about a detail. */
  void tell(String key, String detail) {
    notices.tell(key.replace('.', '-'), Words.of(key, detail));
  }

  /** Another program shows the same file. */
  void tellOpenElsewhere(Path path) {
    tell("file.openElsewhere", path.toString());
  }

  /** Shows the drawing, with what is to be said of it, whatever else the window showed. */
  void showDrawing() {
    stage.getScene().setRoot(main.root());
    main.focusPicture();
  }

  /** Shows something else in place of the drawing, which waits behind it as it is. */
  void showInstead(Parent other) {
    Dress.of(other, looks());
    stage.getScene().setRoot(other);
    other.requestFocus();
  }

  /** How this window looks, for somebody who holds on to it. */
  Looks looks() {
    return program.looks().ofWindow();
  }

  void toFront() {
    stage.setIconified(false);
    stage.toFront();
    stage.requestFocus();
  }

  /** Divides the window as the last one was. */
  void divide(WindowState state) {
    WindowPlace.divide(main.parts(), state.dividers());
  }

  private List<Double> dividers() {
    return WindowPlace.dividers(main.parts());
  }

  /** Closes the window, whatever is unsaved. */
  void closeNow() {
    WindowState state = WindowPlace.of(stage, dividers());
    mending.giveUp();
    journal.ifPresent(JournalKeeper::saved);
    journal.ifPresent(JournalKeeper::close);
    work.close();
    program.closed(this, state);
    stage.close();
  }
}
