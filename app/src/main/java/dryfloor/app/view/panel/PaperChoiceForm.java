package dryfloor.app.view.panel;

import dryfloor.app.paper.PaperSize;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.SeverityText;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.PaperChoice;
import java.util.Arrays;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Asks how papers are to be made: with how many mends, on which sheets, by which scale. */
public final class PaperChoiceForm extends VBox {

  private static final int MOST = 10;
  private static final int USUAL = 3;
  private static final double COLUMN = 460;

  private final Spinner<Integer> count = new Spinner<>(0, MOST, USUAL);
  private final ComboBox<PaperSize> size = new ComboBox<>();
  private final TextField some = new TextField();
  private final TextField much = new TextField();
  private final Label complaint = wrapped("");
  private final Consumer<PaperChoice> begin;

  /**
   * A form in place of the drawing.
   *
   * @param usual what is chosen where nothing else is said
   * @param amounts in the units of the window
   * @param begin takes what is chosen
   */
  public PaperChoiceForm(
      PaperChoice usual, Amounts amounts, Consumer<PaperChoice> begin, Runnable leave) {
    super(12);
    this.begin = begin;
    setAlignment(Pos.CENTER);
    size.getItems().setAll(PaperSize.values());
    size.setConverter(new SizeNames());
    size.setValue(usual.paper());
    some.setPromptText(amounts.volume(usual.severity().some()));
    much.setPromptText(amounts.volume(usual.severity().much()));
    GridPane fields = new GridPane(8, 8);
    fields.setAlignment(Pos.CENTER);
    ColumnConstraints names = new ColumnConstraints();
    names.setHalignment(HPos.RIGHT);
    fields.getColumnConstraints().setAll(names);
    count.getEditor().setAccessibleText(Words.of("papers.choice.count"));
    addField(fields, count, "count");
    addField(fields, size, "size");
    addField(fields, some, "some");
    addField(fields, much, "much");
    complaint.setId("papers-choice-problem");
    complaint.getStyleClass().add("field-problem");
    Button start = new Button(Words.of("papers.choice.begin"));
    start.setId("papers-choice-begin");
    start.setDefaultButton(true);
    start.setOnAction(event -> begin());
    Button back = new Button(Words.of("papers.choice.leave"));
    back.setId("papers-choice-leave");
    back.setCancelButton(true);
    back.setOnAction(event -> leave.run());
    HBox buttons = new HBox(8, start, back);
    buttons.setAlignment(Pos.CENTER);
    getChildren()
        .setAll(
            wrapped(Words.of("papers.choice.ask")),
            fields,
            wrapped(Words.of("papers.choice.scale")),
            complaint,
            buttons);
  }

  private void addField(GridPane fields, Control control, String key) {
    Label name = new Label(Words.of("papers.choice." + key));
    name.setLabelFor(control);
    control.setId("papers-choice-" + key);
    control.setAccessibleText(name.getText());
    fields.addRow(fields.getRowCount(), name, control);
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMaxWidth(COLUMN);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private void begin() {
    switch (SeverityText.of(some.getText(), much.getText())) {
      case SeverityText.Meant meant ->
          begin.accept(new PaperChoice(count.getValue(), size.getValue(), meant.scale()));
      case SeverityText.Refused refused -> {
        complaint.setText(refused.complaint());
        some.requestFocus();
      }
    }
  }

  /** Gives the keys to the first field. */
  public void focusFirst() {
    count.requestFocus();
  }

  /** Sheets as printers call them. */
  private static final class SizeNames extends StringConverter<PaperSize> {

    @Override
    public String toString(PaperSize size) {
      return switch (size) {
        case A4 -> Words.of("papers.size.a4");
        case LETTER -> Words.of("papers.size.letter");
      };
    }

    @Override
    public PaperSize fromString(String name) {
      return Arrays.stream(PaperSize.values())
          .filter(size -> toString(size).equals(name))
          .findFirst()
          .orElseThrow();
    }
  }
}
