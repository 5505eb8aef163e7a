package dryfloor.app.view.panel;

import dryfloor.app.report.Answer;
import dryfloor.app.report.ListedFailure;
import dryfloor.app.view.Words;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;

/** A line of the list: verdict as sign and word, margin, name, and where the water ended up. */
final class FailureCell extends ListCell<FailureListPanel.Line> {

  private final Label verdict = new Label();
  private final Label margin = new Label();
  private final HBox top = new HBox(8, verdict, margin);

  FailureCell() {
    setWrapText(true);
    setPrefWidth(0);
    setContentDisplay(ContentDisplay.TOP);
    margin.getStyleClass().add("failure-margin");
    margin.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(margin, Priority.ALWAYS);
    verdict.setMinWidth(USE_PREF_SIZE);
    top.setPadding(new Insets(0, 0, 2, 0));
    top.prefWidthProperty().bind(widthProperty().subtract(24));
  }

  @Override
  protected void updateItem(FailureListPanel.@Nullable Line line, boolean empty) {
    super.updateItem(line, empty);
    if (empty || line == null) {
      setText("");
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    line.listed()
        .ifPresentOrElse(
            this::show,
            () -> {
              setGraphic(null);
              setText(line.said());
              setAccessibleText(line.said());
            });
  }

  private void show(ListedFailure listed) {
    Answer answer = listed.answer();
    verdict.setText(answer.sign(true) + " " + answer.word());
    verdict
        .getStyleClass()
        .setAll("label", "verdict", "verdict-" + answer.name().toLowerCase(Locale.ROOT));
    margin.setText(listed.margin());
    setGraphic(top);
    setText(listed.name() + "\n" + listed.where());
    setAccessibleText(
        Words.of(
            "list.spoken",
            answer.word(),
            listed.name(),
            listed.where(),
            Optional.of(listed.margin()).filter(text -> !text.isEmpty()).orElse("")));
  }
}
