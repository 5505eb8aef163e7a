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
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** What mends the failure that is looked at, with what each costs elsewhere; applied by a click. */
public final class MendsPanel extends SearchPanel<MendsPanel.Found> {

  /** What was found for one failure of one drawing. */
  record Found(Installation drawing, Failure failure, List<Remedy> remedies)
      implements SearchPanel.Finding {
    Found {
      remedies = List.copyOf(remedies);
    }
  }

  /** The mends of a window. */
  public MendsPanel(Work work, ObservableValue<Units> units) {
    super(work, units);
    begin(
        new Topic(
            "mends",
            Words.of("mends.search"),
            Words.of("mends.searching"),
            Words.of("mends.stale")));
  }

  /** The failure that is looked at, if it is one to mend. */
  private Optional<FailureResult> toMend() {
    return work()
        .chosenResult()
        .filter(result -> Answer.of(result) == Answer.WET || Answer.of(result) == Answer.NO_ANSWER);
  }

  @Override
  void search() {
    Optional<SweepResult> today = work().wholeSweep();
    if (today.isPresent() && toMend().isPresent()) {
      Failure failure = toMend().get().failure();
      int threads = Runtime.getRuntime().availableProcessors();
      exploration()
          .ask(
              progress ->
                  new Found(
                      today.get().installation(),
                      failure,
                      Mends.of(today.get(), failure, threads, progress)));
    }
  }

  @Override
  boolean isToBeAsked() {
    return toMend().isPresent();
  }

  @Override
  boolean isAbout(Found found) {
    return work().chosen().get().filter(FailureNames.id(found.failure())::equals).isPresent();
  }

  @Override
  String sentence(Optional<Found> found) {
    return found
        .map(
            f ->
                f.remedies().isEmpty()
                    ? Words.of("mends.none")
                    : Words.of("mends.found", f.remedies().size()))
        .orElseGet(() -> Words.of(toMend().isPresent() ? "mends.hint" : "mends.choose"));
  }

  @Override
  Stream<Node> cards(Found found, boolean stale) {
    return found.remedies().stream().map(remedy -> card(found, remedy, stale));
  }

  private VBox card(Found found, Remedy remedy, boolean stale) {
    RemedyWords words = new RemedyWords(Wording.of(found.drawing(), units()));
    String change = words.change(remedy.change());
    Button apply = new Button(Words.of("mends.apply"));
    apply.setAccessibleText(Words.of("mends.apply.spoken", change));
    apply.getStyleClass().add("mend-apply");
    apply.setDisable(stale);
    apply.setOnAction(event -> apply(remedy));
    VBox card = card(heading(change));
    List<String> costs = words.costs(remedy);
    if (costs.isEmpty()) {
      card.getChildren().add(cost(Words.of("mends.free")));
    }
    costs.forEach(cost -> card.getChildren().add(cost(cost)));
    card.getChildren().add(apply);
    return card;
  }

  private void apply(Remedy remedy) {
    takeKeys();
    work().change(remedy.mended());
  }
}
