package dryfloor.app.view.rehearsal;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.report.Ink;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/**
 * The form for what was measured: a rehearsed failure is chosen, the depth below the rim entered
 * for each vessel, and the answer says what fits, what differs, and what would explain it.
 */
public final class MeasuredForm extends BorderPane {

  private final Wording wording;
  private final ComboBox<RehearsalStep> choice = new ComboBox<>();
  private final TextField by = new TextField();
  private final GridPane fields = new GridPane();
  private final TextArea answer = new TextArea();
  private final Button compare = new Button(Words.of("measured.compare"));
  private final Button keep = new Button(Words.of("measured.keep"));
  private final Map<String, RehearsalRecord.Rehearsed> record = new LinkedHashMap<>();
  private final Judge judge;

  private List<LevelField> levels = List.of();

  /** Works out what explains the levels, beside the screen, and brings it back to it. */
  public interface Judge {
    /** Judges the levels that were measured in this rehearsal. */
    void judge(
        RehearsalStep step,
        List<RehearsalRecord.Level> levels,
        Consumer<RehearsalRecord.Rehearsed> done);
  }

  /**
   * A form that is empty.
   *
   * @param steps the rehearsals, at least one
   * @param kept gets all that was compared so far, to be written
   * @param leave is called when the form is done with
   */
  public MeasuredForm(
      Wording wording,
      List<RehearsalStep> steps,
      Judge judge,
      Consumer<List<RehearsalRecord.Rehearsed>> kept,
      Runnable leave) {
    this.wording = wording;
    this.judge = judge;
    choice.setId("measured-failure");
    choice.setItems(FXCollections.observableList(steps));
    choice.setConverter(new Named());
    choice.valueProperty().addListener((chosen, before, now) -> show(now));
    by.setId("measured-by");
    answer.setId("measured-answer");
    answer.setAccessibleText(Words.of("measured.answer"));
    answer.setEditable(false);
    answer.setWrapText(true);
    compare.setId("measured-compare");
    compare.setDefaultButton(true);
    compare.setOnAction(event -> compare());
    keep.setId("measured-keep");
    keep.setDisable(true);
    keep.setOnAction(event -> kept.accept(List.copyOf(record.values())));
    Button back = new Button(Words.of("measured.leave"));
    back.setId("measured-leave");
    back.setCancelButton(true);
    back.setOnAction(event -> leave.run());
    fields.setHgap(12);
    fields.setVgap(6);
    Label head = new Label(Words.of("measured.head"));
    head.setWrapText(true);
    FlowPane who = new FlowPane(12, 6, labelled("measured.failure", choice), choice);
    FlowPane hand = new FlowPane(12, 6, labelled("measured.by", by), by, compare, keep, back);
    VBox top = new VBox(12, head, who, fields, hand);
    setTop(top);
    setCenter(answer);
    setPadding(new Insets(16));
    BorderPane.setMargin(answer, new Insets(12, 0, 0, 0));
    choice.getSelectionModel().selectFirst();
  }

  private static Label labelled(String key, Node field) {
    Label label = new Label(Words.of(key));
    label.setLabelFor(field);
    return label;
  }

  private void show(RehearsalStep step) {
    fields.getChildren().clear();
    List<LevelField> all = new ArrayList<>();
    for (RehearsalStep.ExpectedLevel level : step.levels()) {
      LevelField field = new LevelField(wording, level);
      fields.addRow(
          all.size(),
          field.label(),
          field.typedBefore(),
          field.expectedBefore(),
          field.typed(),
          field.expected());
      all.add(field);
    }
    levels = all;
    answer.clear();
  }

  private void compare() {
    List<RehearsalRecord.Level> measured = new ArrayList<>();
    boolean wrong = false;
    for (LevelField field : levels) {
      switch (field.read(by.getText().strip())) {
        case LevelField.Entry.Nothing nothing -> {}
        case LevelField.Entry.Wrong unfit -> wrong = true;
        case LevelField.Entry.Measured right -> measured.add(right.level());
      }
    }
    if (wrong || measured.isEmpty()) {
      answer.setText(Words.of(wrong ? "measured.wrong" : "measured.nothing"));
      return;
    }
    compare.setDisable(true);
    answer.setText(Words.of("measured.working"));
    judge.judge(choice.getValue(), measured, this::tell);
  }

  private void tell(RehearsalRecord.Rehearsed rehearsed) {
    compare.setDisable(false);
    record.put(FailureNames.id(rehearsed.failure()), rehearsed);
    keep.setDisable(false);
    answer.setText(
        RehearsalRecord.text(List.of(rehearsed), Rehearsal.TOLERANCE, wording, Ink.PLAIN));
  }

  /** Rehearsals by the names of their failures. */
  private final class Named extends StringConverter<RehearsalStep> {
    @Override
    public String toString(RehearsalStep step) {
      return FailureNames.name(step.result().failure(), wording.installation());
    }

    @Override
    public RehearsalStep fromString(String name) {
      return choice.getItems().stream()
          .filter(step -> toString(step).equals(name))
          .findFirst()
          .orElseThrow();
    }
  }
}
