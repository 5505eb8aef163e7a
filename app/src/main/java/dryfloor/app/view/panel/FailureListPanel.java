package dryfloor.app.view.panel;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every failure, worst first, with its verdict as a sign and a word; normal operation on top. */
public final class FailureListPanel extends VBox {

  /** A line of the list. */
  private record Line(Optional<String> failure, String sign, String text) {}

  private final Work work;
  private final ObservableList<Line> lines = FXCollections.observableArrayList();
  private final FilteredList<Line> shown = new FilteredList<>(lines);
  private final ListView<Line> list = new ListView<>(shown);
  private final Label state = new Label();

  /** The list of what this window works on. */
  public FailureListPanel(Work work) {
    super(8);
    this.work = work;
    Label title = new Label(Words.of("list.title"));
    title.getStyleClass().add("title-4");
    TextField search = new TextField();
    search.setId("search");
    search.setPromptText(Words.of("list.search"));
    search.textProperty().addListener((text, before, now) -> filter(now));
    state.setWrapText(true);
    state.setId("list-state");
    list.setId("failures");
    list.setAccessibleText(Words.of("list.title"));
    list.setCellFactory(view -> new Cell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener((line, before, now) -> Optional.ofNullable(now).ifPresent(this::choose));
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(title, search, list, state);
    work.answers().addListener((answers, before, now) -> show());
    work.installation().addListener((drawing, before, now) -> tellState());
    show();
  }

  private void choose(Line line) {
    if (!line.failure().equals(work.chosen().get())) {
      work.choose(line.failure());
    }
  }

  private void filter(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    shown.setPredicate(line -> line.text().toLowerCase(Locale.ROOT).contains(wanted));
  }

  private void show() {
    Optional<String> chosen = work.chosen().get();
    if (work.answers().get() instanceof Answers.Known known) {
      Installation drawing = known.installation();
      lines.setAll(new Line(Optional.empty(), "", Words.of("list.normal")));
      known.sweep().worstFirst().forEach(result -> lines.add(line(result, drawing)));
    }
    lines.stream()
        .filter(line -> line.failure().equals(chosen))
        .findFirst()
        .ifPresent(list.getSelectionModel()::select);
    tellState();
  }

  private static Line line(FailureResult result, Installation drawing) {
    Answer answer = Answer.of(result);
    return new Line(
        Optional.of(FailureNames.id(result.failure())),
        answer.sign(true) + " " + answer.word(),
        FailureNames.name(result.failure(), drawing));
  }

  private void tellState() {
    state.setText(
        switch (work.answers().get()) {
          case Answers.Awaited awaited -> Words.of("list.waiting");
          case Answers.Known known ->
              work.isStale() ? Words.of("list.stale") : count(known.sweep());
          case Answers.Faulty faulty -> faulty.findings().getFirst().message();
          case Answers.Unsettled unsettled -> unsettled.reason();
        });
  }

  private static String count(SweepResult sweep) {
    List<Answer> answers = sweep.results().stream().map(Answer::of).toList();
    return Words.of(
        "list.count",
        answers.size(),
        count(answers, Answer.WET),
        count(answers, Answer.CAUGHT),
        count(answers, Answer.DRY));
  }

  private static long count(List<Answer> answers, Answer wanted) {
    return answers.stream().filter(wanted::equals).count();
  }

  /** Shows one line. */
  private static final class Cell extends ListCell<Line> {
    @Override
    protected void updateItem(Line line, boolean empty) {
      super.updateItem(line, empty);
      setText(empty || line == null ? "" : (line.sign() + "  " + line.text()).strip());
      setWrapText(true);
      setPrefWidth(0);
    }
  }
}
