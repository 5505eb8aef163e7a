package dryfloor.app.view;

import dryfloor.app.shipped.Example;
import dryfloor.app.view.file.DrawingFile;
import dryfloor.app.view.file.Journal;
import dryfloor.app.view.file.Journals;
import dryfloor.app.view.file.OpenWindows;
import dryfloor.app.view.file.Opening;
import dryfloor.app.view.file.RecentFiles;
import dryfloor.app.view.file.Settings;
import dryfloor.app.view.file.SettingsFile;
import dryfloor.app.view.file.WindowState;
import dryfloor.app.view.learn.Round;
import dryfloor.app.view.learn.Scores;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * The program on the desktop: its windows, and what they share. To be used by the screen's thread
 * alone.
 */
final class Program implements AutoCloseable {

  private final SettingsFile settingsFile;
  private final Journals journals;
  private final OpenWindows<DrawingWindow> open;
  private final FileQuestions questions;
  private final FileWork files = new FileWork(Platform::runLater);
  private final List<DrawingWindow> windows = new ArrayList<>();
  private final Looks looks;
  private Settings settings;

  /**
   * A program without windows.
   *
   * @param folder where it keeps what it remembers
   */
  Program(Path folder, FileQuestions questions) {
    this.questions = questions;
    settingsFile = new SettingsFile(folder);
    journals = new Journals(folder.resolve("journal"));
    open = new OpenWindows<>(folder.resolve("open"));
    settings = settingsFile.read();
    looks = new Looks(settings.appearance());
    looks.rule();
    looks.whenChanged(() -> remember(known -> known.with(looks.appearance())));
  }

  /** Opens the first window: this file, else what was open last, else an example. */
  DrawingWindow start(Optional<Path> file) {
    Optional<Path> wanted = file.or(() -> settings.recent().last().filter(Files::exists));
    DrawingWindow first =
        switch (wanted.map(Opening::of).orElseGet(Program::example)) {
          case Opening.Opened opened -> newWindow(opened);
          case Opening.Refused refused -> {
            DrawingWindow window = newWindow(exampleDrawing());
            window.desk().tellRefused(refused);
            yield window;
          }
        };
    if (wanted.isEmpty()) {
      settings.recent().last().ifPresent(gone -> first.tell("file.gone", gone.toString()));
    }
    new LeftBehind(this, journals).offerIn(first);
    return first;
  }

  private static Opening example() {
    return exampleDrawing();
  }

  private static Opening.Opened exampleDrawing() {
    return Begun.with(Example.FIRST_LOOK.content());
  }

  /** Opens one more window. */
  DrawingWindow newWindow(Opening.Opened opened) {
    DrawingWindow window = newWindow(opened.file(), opened.drawing(), this::beginJournal);
    window.desk().tellWarnings(opened);
    return window;
  }

  /** Opens one more window for a drawing whose journal is there already. */
  DrawingWindow newWindow(DrawingFile file, Installation drawing, Journal journal) {
    return newWindow(file, drawing, () -> journal);
  }

  private DrawingWindow newWindow(DrawingFile file, Installation drawing, JournalSource journal) {
    Stage stage = new Stage();
    WindowPlace.give(stage, settings.window(), windows.size());
    DrawingWindow window = new DrawingWindow(this, stage, file, drawing, journal);
    windows.add(window);
    stage.show();
    settings.window().ifPresent(window::divide);
    return window;
  }

  /** Where a window gets its journal from. */
  interface JournalSource {
    Journal get() throws IOException;
  }

  /** A journal for something more that is unsaved. */
  Journal beginJournal() throws IOException {
    return journals.begin();
  }

  /** Brings the window to the front that shows a file already. */
  boolean isShown(Path file) {
    Optional<DrawingWindow> window = open.showing(file);
    window.ifPresent(DrawingWindow::toFront);
    return window.isPresent();
  }

  /** Whether a window other than this one shows a file. */
  boolean isShownElsewhere(Path file, DrawingWindow window) {
    return open.showing(file).filter(other -> other != window).isPresent();
  }

  /** A window shows a file from now on; tells it where another program does too. */
  void shows(DrawingWindow window, Path file) {
    remember(known -> known.with(known.recent().with(file)));
    try {
      if (!open.shows(window, file)) {
        window.tellOpenElsewhere(file);
      }
    } catch (IOException e) {
      window.tell("file.holdTrouble", String.valueOf(e.getMessage()));
    }
  }

  /** A window shows a drawing without a file. */
  void showsNoFile(DrawingWindow window) {
    open.shut(window);
  }

  /** A window is closed and will not come back. */
  void closed(DrawingWindow window, WindowState state) {
    open.shut(window);
    windows.remove(window);
    remember(known -> known.with(state));
  }

  /** Asks every window to close; those with unsaved changes ask back and stay until answered. */
  void quit() {
    List.copyOf(windows).forEach(window -> window.saves().close());
  }

  /** How every window of the program looks. */
  Looks looks() {
    return looks;
  }

  RecentFiles recent() {
    return settings.recent();
  }

  Scores scores() {
    return settings.scores();
  }

  /** Remembers what was earned in a set of exercises. */
  void score(String set, Round round) {
    remember(known -> known.with(known.scores().with(set, round)));
  }

  void forgetScore(String set) {
    remember(known -> known.with(known.scores().without(set)));
  }

  void forgetRecent() {
    remember(known -> known.with(RecentFiles.NONE));
  }

  /** Another program may have remembered something since, so the file is read again. */
  private void remember(UnaryOperator<Settings> change) {
    settings = change.apply(settings);
    files.run(
        () -> {
          try {
            settingsFile.write(change.apply(settingsFile.read()));
            return "";
          } catch (IOException e) {
            return String.valueOf(e);
          }
        },
        trouble -> {
          if (!trouble.isEmpty()) {
            windows.forEach(window -> window.tell("file.settingsTrouble", trouble));
          }
        });
  }

  FileWork files() {
    return files;
  }

  FileQuestions questions() {
    return questions;
  }

  List<DrawingWindow> windows() {
    return List.copyOf(windows);
  }

  void tellBreakdown(Throwable failure) {
    windows.forEach(window -> window.tell("file.breakdown", failure.toString()));
  }

  /** Finishes what is being written. */
  @Override
  public void close() {
    files.close();
  }
}
