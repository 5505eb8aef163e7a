package dryfloor.app.view.mending;

import dryfloor.app.view.Words;
import dryfloor.app.view.file.FaultyText;
import dryfloor.app.view.panel.Notices;
import dryfloor.app.view.panel.Notices.Choice;
import dryfloor.app.view.panel.ProblemWords;
import dryfloor.app.view.panel.SentenceCell;
import dryfloor.model.file.Problem;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * The text of a file that is no drawing yet, beside everything that is wrong with it. It is read
 * again while one types; once nothing is wrong it can be opened.
 *
 * <p>Keys: F8 goes to the next problem, with shift to the one before; escape goes back.
 */
public final class MendingView extends BorderPane {

  /** Nobody wants to be told of mistakes in the middle of a word. */
  private static final Duration REST = Duration.millis(250);

  private static final KeyCombination SAVE =
      new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

  private final Mender mender;
  private final Notices notices = new Notices();
  private final Label state = new Label();
  private final ListView<Problem> problems = new ListView<>();
  private final MendingText text;
  private final Button open = new Button(Words.of("mending.open"));
  private final PauseTransition rest = new PauseTransition(REST);
  private FaultyText file;
  private Optional<Reading.Read> sound = Optional.empty();
  private int asked;

  /** Was to be shown before the text was read. */
  private Optional<Problem> wanted = Optional.empty();

  /** Begins to mend. */
  public MendingView(FaultyText file, Mender mender) {
    this.file = file;
    this.mender = mender;
    text = new MendingText(file.text());
    rest.setOnFinished(rested -> read());
    text.text().addListener((typed, before, now) -> changed());
    setTop(new VBox(notices, head()));
    SplitPane parts = new SplitPane(list(), text);
    parts.setDividerPositions(0.36);
    text.setPadding(new Insets(0, 12, 12, 6));
    setCenter(parts);
    addEventFilter(KeyEvent.KEY_PRESSED, this::type);
    read();
  }

  /** Gives the keys to the problems. */
  public void focusProblems() {
    problems.requestFocus();
  }

  /** Whether there is something that the file does not hold. */
  public boolean hasUnsaved() {
    return file.isUnsaved(text.text().get());
  }

  /** Shows what this problem is about, ready to be changed. */
  public void goTo(Problem problem) {
    text.show(problem);
    wanted = Optional.of(problem);
    text.focusText();
  }

  private HBox head() {
    Label title = new Label(Words.of("mending.title", name()));
    title.setWrapText(true);
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    open.setMinWidth(USE_PREF_SIZE);
    open.setId("mending-open");
    open.setOnAction(event -> openIt());
    HBox head = new HBox(8, title, open);
    file.path().ifPresent(path -> head.getChildren().add(saving()));
    Button leave = new Button(Words.of("mending.leave"));
    leave.setId("mending-leave");
    leave.setCancelButton(true);
    leave.setMinWidth(USE_PREF_SIZE);
    leave.setOnAction(event -> leave(this::finish));
    head.getChildren().add(leave);
    head.setAlignment(Pos.CENTER_LEFT);
    head.setPadding(new Insets(12));
    return head;
  }

  private Button saving() {
    Button save = new Button(Words.of("mending.save"));
    save.setId("mending-save");
    save.setMinWidth(USE_PREF_SIZE);
    save.setOnAction(event -> save(() -> {}));
    return save;
  }

  private String name() {
    return file.path().map(Path::toString).orElseGet(() -> Words.of("file.untitled"));
  }

  private VBox list() {
    state.setId("mending-state");
    state.setWrapText(true);
    state.getStyleClass().add("text-bold");
    problems.setId("mending-problems");
    problems.getStyleClass().add("story-list");
    problems.setAccessibleText(Words.of("mending.problems"));
    problems.setCellFactory(view -> new SentenceCell<>(ProblemWords::of));
    problems.setPlaceholder(new Label(Words.of("mending.none")));
    problems
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((problem, before, now) -> Optional.ofNullable(now).ifPresent(text::show));
    problems.setOnMouseClicked(
        click -> {
          if (click.getButton() == MouseButton.PRIMARY) {
            goToChosen();
          }
        });
    VBox list = new VBox(8, state, problems);
    VBox.setVgrow(problems, Priority.ALWAYS);
    list.setPadding(new Insets(0, 6, 12, 12));
    return list;
  }

  private void goToChosen() {
    Optional.ofNullable(problems.getSelectionModel().getSelectedItem())
        .ifPresent(
            problem -> {
              text.show(problem);
              text.focusText();
            });
  }

  private void type(KeyEvent event) {
    if (event.getCode() == KeyCode.F8) {
      step(event.isShiftDown() ? -1 : 1);
      event.consume();
    } else if (event.getCode() == KeyCode.ENTER && problems.isFocused()) {
      goToChosen();
      event.consume();
    } else if (SAVE.match(event) && file.path().isPresent()) {
      save(() -> {});
      event.consume();
    }
  }

  private void step(int by) {
    int count = problems.getItems().size();
    if (count > 0) {
      int chosen = problems.getSelectionModel().getSelectedIndex();
      int next = chosen < 0 ? 0 : Math.floorMod(chosen + by, count);
      problems.getSelectionModel().clearAndSelect(next);
      problems.scrollTo(next);
      goToChosen();
    }
  }

  private void changed() {
    sound = Optional.empty();
    open.setDisable(true);
    state.setText(Words.of("mending.reading"));
    if (hasUnsaved()) {
      mender.changed(file, text.text().get());
    } else {
      mender.nothingUnsaved();
    }
    rest.playFromStart();
  }

  private void read() {
    int question = ++asked;
    open.setDisable(true);
    state.setText(Words.of("mending.reading"));
    String read = text.text().get();
    mender.read(
        read,
        reading -> {
          if (question == asked && read.equals(text.text().get())) {
            show(reading);
          }
        });
  }

  private void show(Reading reading) {
    switch (reading) {
      case Reading.Read read -> {
        sound = Optional.of(read);
        state.setText(Words.of("mending.sound", read.warnings().size()));
        list(List.of());
      }
      case Reading.Rejected rejected -> {
        state.setText(Words.of("mending.count", rejected.problems().size()));
        list(rejected.problems());
      }
    }
    open.setDisable(sound.isEmpty());
  }

  private void list(List<Problem> found) {
    if (!found.equals(problems.getItems())) {
      // What is typed must not be led elsewhere by a list that has become another one.
      problems.getSelectionModel().clearSelection();
      problems.getItems().setAll(found);
      wanted.filter(found::contains).ifPresent(problems.getSelectionModel()::select);
    }
    wanted = Optional.empty();
  }

  private void openIt() {
    sound.ifPresent(read -> mender.open(file.opened(read, text.text().get())));
  }

  private void save(Runnable then) {
    String written = text.text().get();
    mender.write(
        file,
        written,
        result -> {
          switch (result) {
            case FaultyText.Written.Kept kept -> {
              file = kept.text();
              if (!hasUnsaved()) {
                mender.nothingUnsaved();
              }
              notices.tell("mending", Words.of("mending.saved", name()));
              then.run();
            }
            case FaultyText.Written.ChangedByOthers theirs ->
                notices.tell("mending", Words.of("mending.changed", name()));
            case FaultyText.Written.Failed failed ->
                notices.tell("mending", Words.of("mending.failed", name(), failed.reason()));
          }
        });
  }

  /** Ends the mending; what is unsaved is given up. */
  public void finish() {
    rest.stop();
    asked++;
    mender.leave();
  }

  /** Does something that ends the mending; asks first where something is unsaved. */
  public void leave(Runnable then) {
    if (!hasUnsaved()) {
      then.run();
      return;
    }
    Choice discard = new Choice(Words.of("mending.discard"), then);
    Choice goOn = new Choice(Words.of("file.goOn"), text::focusText);
    if (file.path().isPresent()) {
      Choice save = new Choice(Words.of("mending.saveAndLeave"), () -> save(then));
      notices.ask("mending-leaving", Words.of("mending.leaving", name()), save, discard, goOn);
    } else {
      notices.ask("mending-leaving", Words.of("mending.leaving", name()), discard, goOn);
    }
  }
}
