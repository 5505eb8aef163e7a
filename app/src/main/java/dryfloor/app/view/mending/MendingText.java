package dryfloor.app.view.mending;

import dryfloor.app.view.Words;
import dryfloor.app.view.file.TextPlace;
import dryfloor.model.file.Problem;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The text of a file, to be changed, and where in it one is. */
final class MendingText extends VBox {

  private final TextArea area = new TextArea();
  private final Label place = new Label();

  MendingText(String text) {
    super(4);
    area.setId("mending-text");
    area.setAccessibleText(Words.of("mending.text"));
    area.getStyleClass().add("mending-text");
    area.setText(text);
    place.setId("mending-place");
    setVgrow(area, Priority.ALWAYS);
    getChildren().addAll(area, place);
    area.selectionProperty().addListener((selection, before, now) -> showPlace());
    showPlace();
  }

  ObservableStringValue text() {
    return area.textProperty();
  }

  /** Shows what a problem is about, as it stands in the text. */
  void show(Problem problem) {
    TextPlace at = TextPlace.of(area.getText(), problem);
    area.selectRange(at.start(), at.end());
  }

  /** Gives the keys to the text. */
  void focusText() {
    area.requestFocus();
  }

  private void showPlace() {
    String text = area.getText();
    int caret = Math.min(area.getSelection().getStart(), text.length());
    place.setText(
        Words.of("mending.place", TextPlace.line(text, caret), TextPlace.column(text, caret)));
  }
}
