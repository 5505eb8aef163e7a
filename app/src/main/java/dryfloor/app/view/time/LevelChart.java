package dryfloor.app.view.time;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.MovingScene;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;

/**
 * Levels of the ticked vessels over time, above the line of time and on the same scale. Gone while
 * none is ticked. Curves differ in their dashes, not in colour alone.
 */
public final class LevelChart extends VBox {

  private final Work work;
  private final ObservableList<String> ticked;
  private final LevelPlot plot = new LevelPlot();
  private final FlowPane legend = new FlowPane(14, 2);
  private final ToggleButton belowRim = new ToggleButton(Words.of("chart.below.rim"));
  private final List<Label> texts = new ArrayList<>();
  private Optional<MovingScene> film = Optional.empty();

  /** A chart of the vessels with these ids. */
  public LevelChart(Work work, ObservableList<String> ticked) {
    this.work = work;
    this.ticked = ticked;
    setId("chart");
    belowRim.setId("below-rim");
    belowRim.setMinWidth(USE_PREF_SIZE);
    belowRim.selectedProperty().addListener((selected, before, now) -> show());
    legend.setAlignment(Pos.CENTER_LEFT);
    HBox top = new HBox(12, belowRim, legend);
    HBox.setHgrow(legend, Priority.ALWAYS);
    top.setPadding(new Insets(6, 12, 0, 12));
    top.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(top, plot);
    ticked.addListener((ListChangeListener<String>) change -> show());
    work.moment().addListener((moment, before, now) -> showMoment());
    show();
  }

  /** Draws the levels of a failure. */
  public void show(MovingScene next) {
    film = Optional.of(next);
    show();
  }

  private void show() {
    boolean seen = !ticked.isEmpty() && film.isPresent();
    setVisible(seen);
    setManaged(seen);
    film.filter(shown -> seen).ifPresent(this::draw);
    showMoment();
  }

  private void draw(MovingScene shown) {
    plot.show(shown, chosen(shown), belowRim.isSelected());
    build(chosen(shown));
  }

  private List<Outcome.VesselOutcome> chosen(MovingScene shown) {
    return ticked.stream()
        .flatMap(id -> shown.outcome().vessels().stream().filter(v -> v.id().equals(id)))
        .toList();
  }

  private void showMoment() {
    double moment = work.moment().get();
    plot.show(moment);
    film.filter(shown -> isVisible()).ifPresent(shown -> tell(shown, moment));
  }

  /** Levels at the moment, beside a sample of each curve. */
  private void tell(MovingScene shown, double moment) {
    List<Outcome.VesselOutcome> vessels = chosen(shown);
    for (int i = 0; i < vessels.size(); i++) {
      texts.get(i).setText(text(shown, vessels.get(i), moment));
    }
    plot.setAccessibleText(
        Words.of("chart.spoken", String.join("; ", texts.stream().map(Label::getText).toList())));
  }

  private void build(List<Outcome.VesselOutcome> vessels) {
    texts.clear();
    legend.getChildren().clear();
    for (int i = 0; i < vessels.size(); i++) {
      Line sample = new Line(0, 0, 34, 0);
      LevelPlot.dress(sample, i);
      Label label = new Label();
      label.setId("chart-" + vessels.get(i).id());
      texts.add(label);
      HBox entry = new HBox(6, sample, label);
      entry.setAlignment(Pos.CENTER_LEFT);
      legend.getChildren().add(entry);
    }
  }

  private String text(MovingScene shown, Outcome.VesselOutcome vessel, double moment) {
    double level =
        shown.outcome().trajectory().levelAt(Math.min(moment, shown.duration()), vessel.id());
    String name = shown.wording().names().label(vessel.id());
    return belowRim.isSelected()
        ? Words.of(
            level <= vessel.rim() ? "chart.entry.below" : "chart.entry.over",
            name,
            shown.wording().amounts().level(Math.abs(vessel.rim() - level)))
        : Words.of("chart.entry", name, shown.wording().amounts().level(level - vessel.bottom()));
  }
}
