package dryfloor.app.view.panel;

import dryfloor.app.view.Words;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Asks for how many of the worst failures mends are to be looked for, before papers are made. */
public final class MendCountForm extends VBox {

  private static final int MOST = 10;
  private static final int USUAL = 3;
  private static final double COLUMN = 460;

  private final Spinner<Integer> count = new Spinner<>(1, MOST, USUAL);

  /**
   * A form in place of the drawing.
   *
   * @param begin takes the number
   */
  public MendCountForm(IntConsumer begin, Runnable leave) {
    super(12);
    setAlignment(Pos.CENTER);
    Label question = new Label(Words.of("papers.mends.ask"));
    question.setWrapText(true);
    question.setMaxWidth(COLUMN);
    question.setMinHeight(USE_PREF_SIZE);
    Label name = new Label(Words.of("papers.mends.count"));
    name.setLabelFor(count);
    count.setId("papers-mends-count");
    count.setAccessibleText(name.getText());
    count.getEditor().setAccessibleText(name.getText());
    HBox line = new HBox(8, name, count);
    line.setAlignment(Pos.CENTER);
    Button start = new Button(Words.of("papers.mends.begin"));
    start.setId("papers-mends-begin");
    start.setDefaultButton(true);
    start.setOnAction(event -> begin.accept(count.getValue()));
    Button back = new Button(Words.of("papers.mends.leave"));
    back.setId("papers-mends-leave");
    back.setCancelButton(true);
    back.setOnAction(event -> leave.run());
    HBox buttons = new HBox(8, start, back);
    buttons.setAlignment(Pos.CENTER);
    getChildren().setAll(question, line, buttons);
  }

  /** Gives the keys to the number. */
  public void focusCount() {
    count.requestFocus();
  }
}
