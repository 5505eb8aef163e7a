package dryfloor.app.view.panel;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.ListedFailure;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Belonging;
import dryfloor.app.view.work.FailureFilter;
import dryfloor.app.view.work.Work;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every failure, worst first, with its verdict as a sign and a word; normal operation on top. */
public final class FailureListPanel extends VBox {

  /** A line of the list; nothing is listed but normal operation where there is no result. */
  record Line(Optional<FailureResult> result, Optional<ListedFailure> listed) {

    Optional<String> failure() {
      return result.map(answer -> FailureNames.id(answer.failure()));
    }

    /** Whether it says the same of the same failure as another. */
    boolean saysAs(Line other) {
      return failure().equals(other.failure()) && listed.equals(other.listed());
    }

    /** All that it says, as text. */
    String said() {
      return listed
          .map(line -> line.name() + " " + line.where() + " " + line.answer().word())
          .orElseGet(() -> Words.of("list.normal"));
    }
  }

  /** So many lines are renewed one by one; more of them, all at once. */
  private static final int ONE_BY_ONE = 40;

  private final Work work;
  private final ObservableValue<Units> units;
  private final ObservableList<Line> lines = FXCollections.observableArrayList();
  private final FilteredList<Line> shown = new FilteredList<>(lines);
  private final ListView<Line> list = new ListView<>(shown);
  private final FailureFilterBar filters = new FailureFilterBar();
  private final Label state = new Label();
  private final Label none = new Label();
  private Belonging belonging;

  /** Whether the lines are being changed: what the list selects by itself then is no choice. */
  private boolean filling;

  /** The list of what this window works on. */
  public FailureListPanel(Work work, ObservableValue<Units> units) {
    super(8);
    this.work = work;
    this.units = units;
    belonging = new Belonging(work.installation().get());
    Label title = new Label(Words.of("list.title"));
    title.getStyleClass().add("title-4");
    state.setWrapText(true);
    state.setMinHeight(USE_PREF_SIZE);
    state.setId("list-state");
    list.setId("failures");
    list.getStyleClass().add("failure-list");
    list.setAccessibleText(Words.of("list.title"));
    list.setPlaceholder(none);
    list.setCellFactory(view -> new FailureCell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener((line, before, now) -> Optional.ofNullable(now).ifPresent(this::choose));
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(title, filters, list, state);
    filters.filter().addListener((filter, before, now) -> narrow(now));
    units.addListener((property, before, now) -> show());
    work.answers().addListener((answers, before, now) -> show());
    work.installation().addListener((drawing, before, now) -> tellState());
    work.chosen().addListener((failure, before, now) -> select());
    show();
  }

  private void choose(Line line) {
    if (!filling && !line.failure().equals(work.chosen().get())) {
      work.choose(line.failure());
    }
  }

  private void narrow(FailureFilter filter) {
    filling = true;
    shown.setPredicate(
        line ->
            line.result()
                .map(
                    result ->
                        filter.shows(result.failure(), Answer.of(result), line.said(), belonging))
                .orElse(true));
    filling = false;
    select();
    tellState();
  }

  private void show() {
    if (work.answers().get() instanceof Answers.Known known) {
      SweepResult sweep = known.sweep();
      Wording wording = Wording.of(known.installation(), units.getValue());
      belonging = new Belonging(known.installation());
      List<Line> all = new ArrayList<>();
      all.add(new Line(Optional.empty(), Optional.empty()));
      for (FailureResult result : sweep.worstFirst()) {
        ListedFailure listed = ListedFailure.of(wording, result, sweep.normal());
        all.add(new Line(Optional.of(result), Optional.of(listed)));
      }
      filling = true;
      renew(all);
      filters.show(sweep);
      filling = false;
    }
    select();
    tellState();
  }

  /** Lines that say what they said stay: to lay out new ones costs more than to keep them. */
  private void renew(List<Line> all) {
    List<Integer> other =
        IntStream.range(0, all.size())
            .filter(i -> i >= lines.size() || !lines.get(i).saysAs(all.get(i)))
            .boxed()
            .toList();
    if (all.size() == lines.size() && other.size() < ONE_BY_ONE) {
      other.forEach(i -> lines.set(i, all.get(i)));
    } else {
      lines.setAll(all);
    }
  }

  private void select() {
    Optional<String> chosen = work.chosen().get();
    shown.stream()
        .filter(line -> line.failure().equals(chosen))
        .findFirst()
        .ifPresent(list.getSelectionModel()::select);
  }

  private void tellState() {
    none.setText(work.answers().get() instanceof Answers.Awaited ? "" : Words.of("list.none"));
    state.setText(
        switch (work.answers().get()) {
          case Answers.Awaited awaited -> Words.of("list.waiting");
          case Answers.Known known ->
              work.isStale()
                  ? Words.of("list.stale")
                  : known.isWhole()
                      ? Words.of("list.shown", shown.size() - 1, lines.size() - 1)
                      : Words.of("list.so.far", lines.size() - 1, known.outstanding());
          case Answers.Faulty faulty -> faulty.findings().getFirst().message();
          case Answers.Unsettled unsettled -> unsettled.reason();
        });
  }
}
