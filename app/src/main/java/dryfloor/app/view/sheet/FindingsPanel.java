package dryfloor.app.view.sheet;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import dryfloor.app.view.panel.SentenceCell;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * What was filled in and not taken over, and all that the checks find in the drawing, errors first.
 * A click goes to the place of one, and so does enter.
 */
public final class FindingsPanel extends VBox {

  /** A finding, and its words at present. */
  private record Listed(Finding finding, String words) {}

  private static final double HEIGHT = 150;
  private static final Duration REST = Duration.millis(120);

  private final Work work;
  private final ObservableList<Finding> refused;
  private final Label count = new Label();
  private final ListView<Listed> list = new ListView<>();
  private final PauseTransition rest = new PauseTransition(REST);

  /**
   * The findings in the drawing of a window.
   *
   * @param refused what was filled in and not taken over
   * @param goTo takes the one that is chosen
   */
  public FindingsPanel(Work work, ObservableList<Finding> refused, Consumer<Finding> goTo) {
    super(6);
    this.work = work;
    this.refused = refused;
    count.setId("findings-count");
    count.getStyleClass().add("text-bold");
    list.setId("findings");
    list.setPrefHeight(HEIGHT);
    list.setAccessibleText(Words.of("findings.spoken"));
    list.setCellFactory(view -> new SentenceCell<>(Listed::words));
    list.setOnMouseClicked(click -> choose(goTo));
    list.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            choose(goTo);
          }
        });
    getChildren().addAll(count, list);
    rest.setOnFinished(rested -> show());
    work.installation().addListener((drawing, before, now) -> rest.playFromStart());
    refused.addListener((ListChangeListener<Finding>) change -> show());
    show();
  }

  private void choose(Consumer<Finding> goTo) {
    Optional.ofNullable(list.getSelectionModel().getSelectedItem())
        .map(Listed::finding)
        .ifPresent(goTo);
  }

  private void show() {
    List<Listed> findings =
        Stream.concat(
                refused.stream(), all().sorted(Comparator.comparing(finding -> !finding.isError())))
            .map(finding -> new Listed(finding, words(finding)))
            .toList();
    if (!findings.equals(list.getItems())) {
      list.getItems().setAll(findings);
    }
    list.setVisible(!findings.isEmpty());
    list.setManaged(!findings.isEmpty());
    count.setText(
        findings.isEmpty()
            ? Words.of("findings.none")
            : Words.of("findings.count", findings.size()));
  }

  /** All that is found in the drawing as it is now. */
  Stream<Finding> all() {
    Installation drawing = work.installation().get();
    return Stream.concat(
        DrawingCheck.check(drawing).stream(), NamedFailures.check(drawing).stream());
  }

  /** Its place, what is wrong, and what would be right. */
  private String words(Finding finding) {
    return Words.of(
        kind(finding),
        Names.of(work.installation().get()).of(finding.element()),
        finding.message(),
        finding.remedy());
  }

  private String kind(Finding finding) {
    if (refused.contains(finding)) {
      return "findings.refused";
    }
    return finding.isError() ? "findings.error" : "findings.warning";
  }
}
