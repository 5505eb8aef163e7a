package dryfloor.app.view.sheet;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.app.view.Words;
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
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/** All that the checks find in the drawing, errors first; choosing one goes to its place. */
public final class FindingsPanel extends VBox {

  private static final double HEIGHT = 150;
  private static final Duration REST = Duration.millis(120);

  private final Work work;
  private final Label count = new Label();
  private final ListView<Finding> list = new ListView<>();
  private final PauseTransition rest = new PauseTransition(REST);

  /**
   * The findings in the drawing of a window.
   *
   * @param goTo takes the one that is chosen
   */
  public FindingsPanel(Work work, Consumer<Finding> goTo) {
    super(6);
    this.work = work;
    count.setId("findings-count");
    count.getStyleClass().add("text-bold");
    list.setId("findings");
    list.setPrefHeight(HEIGHT);
    list.setAccessibleText(Words.of("findings.spoken"));
    list.setPlaceholder(new Label(Words.of("findings.none")));
    list.setCellFactory(view -> new FindingCell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener((finding, before, now) -> Optional.ofNullable(now).ifPresent(goTo));
    getChildren().addAll(count, list);
    rest.setOnFinished(rested -> show());
    work.installation().addListener((drawing, before, now) -> rest.playFromStart());
    show();
  }

  private void show() {
    List<Finding> findings =
        all().sorted(Comparator.comparing(finding -> !finding.isError())).toList();
    if (!findings.equals(list.getItems())) {
      list.getItems().setAll(findings);
    }
    count.setText(Words.of("findings.count", findings.size()));
  }

  /** All that is found in the drawing as it is now. */
  Stream<Finding> all() {
    Installation drawing = work.installation().get();
    return Stream.concat(
        DrawingCheck.check(drawing).stream(), NamedFailures.check(drawing).stream());
  }

  /** A finding: its place, what is wrong, and what would be right. */
  private static final class FindingCell extends ListCell<Finding> {
    FindingCell() {
      setWrapText(true);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable Finding finding, boolean empty) {
      super.updateItem(finding, empty);
      setText(empty || finding == null ? "" : text(finding));
    }

    private static String text(Finding finding) {
      return Words.of(
          finding.isError() ? "findings.error" : "findings.warning",
          finding.element(),
          finding.message(),
          finding.remedy());
    }
  }
}
