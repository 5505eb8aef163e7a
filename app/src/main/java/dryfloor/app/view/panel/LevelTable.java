package dryfloor.app.view.panel;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.MovingScene;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Insets;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The level of each vessel, before, now and at the end; ticked ones are seen over time. */
public final class LevelTable extends ScrollPane {

  private final Work work;
  private final VBox lines = new VBox(10);
  private final ObservableList<String> ticked = FXCollections.observableArrayList();
  private final Map<String, Label> texts = new HashMap<>();

  LevelTable(Work work) {
    this.work = work;
    setId("levels");
    lines.setPadding(new Insets(8, 4, 8, 4));
    setContent(lines);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
  }

  /** Ids of the vessels that are to be seen over time, in the order of ticking. */
  public ObservableList<String> ticked() {
    return ticked;
  }

  void show(MovingScene film) {
    List<String> vessels =
        film.outcome().vessels().stream().map(Outcome.VesselOutcome::id).toList();
    ticked.removeIf(id -> !vessels.contains(id));
    texts.clear();
    Label hint = new Label(Words.of("levels.hint"));
    hint.setWrapText(true);
    lines.getChildren().setAll(hint);
    film.outcome().vessels().forEach(vessel -> lines.getChildren().add(line(vessel, film)));
    showMoment(film);
  }

  private VBox line(Outcome.VesselOutcome vessel, MovingScene film) {
    CheckBox tick = new CheckBox(film.wording().names().label(vessel.id()));
    tick.setId("tick-" + vessel.id());
    tick.setSelected(ticked.contains(vessel.id()));
    tick.setWrapText(true);
    tick.selectedProperty()
        .addListener(
            (property, before, now) -> {
              if (now) {
                ticked.add(vessel.id());
              } else {
                ticked.remove(vessel.id());
              }
            });
    Label text = new Label();
    text.setId("level-" + vessel.id());
    text.setWrapText(true);
    text.setPadding(new Insets(0, 0, 0, 26));
    texts.put(vessel.id(), text);
    return new VBox(2, tick, text);
  }

  void showMoment(MovingScene film) {
    film.outcome()
        .vessels()
        .forEach(
            vessel ->
                Optional.ofNullable(texts.get(vessel.id()))
                    .ifPresent(label -> label.setText(text(vessel, film))));
  }

  private String text(Outcome.VesselOutcome vessel, MovingScene film) {
    Amounts amounts = film.wording().amounts();
    String before = amounts.level(vessel.levelBefore() - vessel.bottom());
    String after = amounts.level(vessel.levelAfter() - vessel.bottom());
    double moment = work.moment().get();
    if (Double.isInfinite(moment)) {
      return Words.of(
          "levels.end",
          before,
          after,
          amounts.volumeChange(vessel.volumeAfter() - vessel.volumeBefore()),
          toRim(vessel.rim() - vessel.levelAfter(), amounts));
    }
    double now = film.outcome().trajectory().levelAt(moment, vessel.id());
    return Words.of(
        "levels.now",
        before,
        amounts.level(now - vessel.bottom()),
        after,
        toRim(vessel.rim() - now, amounts));
  }

  /** Water that pours over a rim stands above it. */
  private static String toRim(double left, Amounts amounts) {
    return left >= 0
        ? Words.of("levels.below", amounts.level(left))
        : Words.of("levels.over", amounts.level(-left));
  }
}
