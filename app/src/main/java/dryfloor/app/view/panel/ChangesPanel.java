package dryfloor.app.view.panel;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What ends better and worse than when the drawing was saved last; absent while nothing does. */
public final class ChangesPanel extends VBox {

  private static final double HEIGHT = 150;

  /** A line of the list. */
  private record Line(Optional<String> failure, String text) {
    @Override
    public String toString() {
      return text;
    }
  }

  private final Work work;
  private final Label count = new Label();
  private final ListView<Line> list = new ListView<>();

  /** What changed in the work of a window. */
  public ChangesPanel(Work work) {
    super(6);
    this.work = work;
    count.setId("changes-count");
    count.getStyleClass().add("text-bold");
    count.setWrapText(true);
    count.setMinHeight(USE_PREF_SIZE);
    list.setId("changes");
    list.setPrefHeight(HEIGHT);
    list.setAccessibleText(Words.of("changes.spoken"));
    list.setCellFactory(view -> new WrappedLine());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (line, before, now) ->
                Optional.ofNullable(now)
                    .flatMap(Line::failure)
                    .ifPresent(id -> work.choose(Optional.of(id))));
    getChildren().addAll(count, list);
    work.changes().addListener((changes, before, now) -> show(now));
    show(work.changes().get());
  }

  private void show(Optional<Changes> changes) {
    boolean shown = changes.map(found -> !found.isEmpty()).orElse(false);
    setVisible(shown);
    setManaged(shown);
    changes.filter(found -> !found.isEmpty()).ifPresent(this::tell);
  }

  private void tell(Changes changes) {
    count.setText(
        Words.of("changes.count", changes.better().size(), changes.worse().size())
            + counted("changes.turned", turned(changes))
            + counted("changes.added", changes.added().size())
            + counted("changes.gone", changes.gone().size()));
    List<Line> lines = new ArrayList<>();
    changes.worse().forEach(change -> lines.add(line("changes.worse", change)));
    changes.better().forEach(change -> lines.add(line("changes.better", change)));
    changes.added().forEach(result -> lines.add(added(result)));
    changes
        .gone()
        .forEach(
            failure ->
                lines.add(
                    new Line(Optional.empty(), Words.of("changes.gone.one", failure.name()))));
    list.getItems().setAll(lines);
  }

  private static int turned(Changes changes) {
    return (int)
        Stream.of(changes.better(), changes.worse())
            .flatMap(List::stream)
            .filter(Changes.Change::isTurned)
            .count();
  }

  private static String counted(String key, int count) {
    return count == 0 ? "" : Words.of(key, count);
  }

  private Line line(String key, Changes.Change change) {
    String turn =
        change.isTurned()
            ? Words.of("changes.turn", word(change.before()), word(change.now()))
            : word(change.now());
    return new Line(Optional.of(change.failure()), Words.of(key, turn, name(change.now())));
  }

  private Line added(FailureResult result) {
    return new Line(
        Optional.of(FailureNames.id(result.failure())),
        Words.of("changes.added.one", word(result), name(result)));
  }

  private static String word(FailureResult result) {
    Answer answer = Answer.of(result);
    return answer.sign(true) + " " + answer.word();
  }

  private String name(FailureResult result) {
    return FailureNames.name(result.failure(), work.answers().get().installation());
  }

  /** A line as broad as the list. */
  private static final class WrappedLine extends ListCell<Line> {
    WrappedLine() {
      setWrapText(true);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable Line line, boolean empty) {
      super.updateItem(line, empty);
      setText(empty || line == null ? "" : line.text());
    }
  }
}
