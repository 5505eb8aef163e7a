package dryfloor.app.view.sheet;

import dryfloor.app.report.BoundsText;
import dryfloor.app.view.Words;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * What is asked of limits beyond dry floors: how much water animals keep, and how salt it stays.
 */
final class BoundsFields extends VBox {

  private static final int COLUMNS = 4;

  private final TextField keep = field("limits-keep", "80 %", "limits.keep.spoken");
  private final TextField least = field("limits-least", "33 g/kg", "limits.least.spoken");
  private final TextField most = field("limits-most", "37 g/kg", "limits.most.spoken");
  private final Label complaint = new Label();

  BoundsFields() {
    super(4);
    complaint.setId("limits-problem");
    complaint.getStyleClass().add("field-problem");
    complaint.setWrapText(true);
    complaint.setMinHeight(USE_PREF_SIZE);
    Label heading = new Label(Words.of("limits.bounds"));
    heading.setWrapText(true);
    heading.setMinHeight(USE_PREF_SIZE);
    heading.getStyleClass().add("text-bold");
    getChildren()
        .addAll(
            heading,
            new FlowPane(
                8,
                4,
                row(label("limits.keep", keep), keep),
                row(label("limits.least", least), least, label("limits.most", most), most)),
            complaint);
    complain("");
  }

  /** What they say now. */
  BoundsText read() {
    return BoundsText.of(keep.getText(), least.getText(), most.getText());
  }

  /** Shows what makes no sense, with the keys where it was written; nothing where all is well. */
  void complain(BoundsText.Refused refused) {
    complain(refused.complaint());
    switch (refused.part()) {
      case KEEP -> keep.requestFocus();
      case SALINITY -> (least.getText().isBlank() ? least : most).requestFocus();
    }
  }

  void complain(String text) {
    complaint.setText(text);
    complaint.setVisible(!text.isEmpty());
    complaint.setManaged(!text.isEmpty());
  }

  private static TextField field(String id, String example, String spoken) {
    TextField field = new TextField();
    field.setId(id);
    field.setPromptText(example);
    field.setPrefColumnCount(COLUMNS);
    field.setAccessibleText(Words.of(spoken));
    return field;
  }

  private static Label label(String words, TextField field) {
    Label label = new Label(Words.of(words));
    label.setLabelFor(field);
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static HBox row(Node... nodes) {
    HBox row = new HBox(6, nodes);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }
}
