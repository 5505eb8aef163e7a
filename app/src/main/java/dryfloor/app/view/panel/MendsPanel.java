package dryfloor.app.view.panel;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Mends;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.RemedyWords;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Exploration;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What mends the failure that is looked at, with what each costs elsewhere; applied by a click. */
public final class MendsPanel extends VBox {

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  /** What was found for one failure of one drawing. */
  private record Found(Installation drawing, Failure failure, List<Remedy> remedies) {
    Found {
      remedies = List.copyOf(remedies);
    }
  }

  private final Work work;
  private final ObservableValue<Units> units;
  private final Exploration<Found> exploration;
  private final Label state = new Label();
  private final SearchBar search;
  private final VBox cards = new VBox(10);
  private final ScrollPane scroll = new ScrollPane();

  /** The mends of a window. */
  public MendsPanel(Work work, ObservableValue<Units> units) {
    super(8);
    this.work = work;
    this.units = units;
    exploration = work.exploration();
    search = new SearchBar("mends-search", Words.of("mends.search"), exploration, this::search);
    state.setId("mends-state");
    state.setWrapText(true);
    state.setMinHeight(USE_PREF_SIZE);
    cards.setId("mends");
    cards.getStyleClass().add("mends");
    scroll.setContent(cards);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(state, search, scroll);
    exploration.state().addListener((known, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    work.answers().addListener((answers, before, now) -> show());
    work.installation().addListener((drawing, before, now) -> show());
    units.addListener((property, before, now) -> show());
    show();
  }

  /** The failure that is looked at, if it is one to mend. */
  private Optional<FailureResult> toMend() {
    return work.chosenResult()
        .filter(result -> Answer.of(result) == Answer.WET || Answer.of(result) == Answer.NO_ANSWER);
  }

  private void search() {
    Optional<SweepResult> today = work.wholeSweep();
    if (today.isPresent() && toMend().isPresent()) {
      Failure failure = toMend().get().failure();
      int threads = Runtime.getRuntime().availableProcessors();
      exploration.ask(
          progress ->
              new Found(
                  today.get().installation(),
                  failure,
                  Mends.of(today.get(), failure, threads, progress)));
    }
  }

  private Optional<Found> found() {
    return exploration.state().get() instanceof Exploration.State.Done<Found> done
        ? Optional.of(done.answer())
            .filter(
                found ->
                    work.chosen()
                        .get()
                        .filter(FailureNames.id(found.failure())::equals)
                        .isPresent())
        : Optional.empty();
  }

  private void show() {
    search.begin().setDisable(work.wholeSweep().isEmpty() || toMend().isEmpty());
    Optional<Found> found = found();
    boolean stale = found.filter(f -> !f.drawing().equals(work.installation().get())).isPresent();
    cards.pseudoClassStateChanged(STALE, stale);
    state.setText(sentence(found, stale));
    cards
        .getChildren()
        .setAll(
            found.stream()
                .flatMap(f -> f.remedies().stream().map(remedy -> card(f, remedy, stale)))
                .toList());
  }

  private String sentence(Optional<Found> found, boolean stale) {
    if (exploration.state().get() instanceof Exploration.State.Working<Found>) {
      return Words.of("mends.searching");
    }
    if (stale) {
      return Words.of("mends.stale");
    }
    return found
        .map(
            f ->
                f.remedies().isEmpty()
                    ? Words.of("mends.none")
                    : Words.of("mends.found", f.remedies().size()))
        .orElseGet(() -> Words.of(toMend().isPresent() ? "mends.hint" : "mends.choose"));
  }

  private VBox card(Found found, Remedy remedy, boolean stale) {
    RemedyWords words = new RemedyWords(Wording.of(found.drawing(), units.getValue()));
    String change = words.change(remedy.change());
    Label what = wrapped(change);
    what.getStyleClass().add("text-bold");
    Button apply = new Button(Words.of("mends.apply"));
    apply.setAccessibleText(Words.of("mends.apply.spoken", change));
    apply.getStyleClass().add("mend-apply");
    apply.setDisable(stale);
    apply.setOnAction(event -> apply(remedy));
    VBox card = new VBox(4, what);
    card.getStyleClass().add("mend");
    List<String> costs = words.costs(remedy);
    if (costs.isEmpty()) {
      card.getChildren().add(cost(Words.of("mends.free")));
    }
    costs.forEach(cost -> card.getChildren().add(cost(cost)));
    card.getChildren().add(apply);
    return card;
  }

  /** The keys must not go on to a field for text, which would keep those for undo to itself. */
  private void apply(Remedy remedy) {
    scroll.requestFocus();
    work.change(remedy.mended());
  }

  private static Label cost(String text) {
    Label label = wrapped(text);
    label.getStyleClass().add("mend-cost");
    return label;
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
