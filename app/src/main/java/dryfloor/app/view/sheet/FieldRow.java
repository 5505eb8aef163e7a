package dryfloor.app.view.sheet;

import dryfloor.app.view.Words;
import dryfloor.app.view.edit.Field;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One field: its label, what it is filled in with, and what is wrong with that. */
final class FieldRow extends VBox {

  private static final double LABEL = 120;

  private final BiConsumer<Field, String> fillIn;
  private final Runnable takenBack;
  private final Label label = new Label();
  private final Label problem = new Label();
  private final Region control;
  private Field field;

  /** Whether the control is being set, which is no change by its reader. */
  private boolean showing;

  /**
   * A row for a field.
   *
   * @param fillIn takes what the reader fills in
   * @param leaveOut takes the wish to leave it out
   * @param takenBack to be run when what was refused is given up
   */
  FieldRow(
      Field field, BiConsumer<Field, String> fillIn, Consumer<Field> leaveOut, Runnable takenBack) {
    super(2);
    this.field = field;
    this.fillIn = fillIn;
    this.takenBack = takenBack;
    control = control(field);
    label.setMinWidth(LABEL);
    label.setPrefWidth(LABEL);
    label.setWrapText(true);
    label.setLabelFor(control);
    problem.getStyleClass().add("field-problem");
    problem.setWrapText(true);
    problem.setId("problem-" + field.path());
    HBox line = new HBox(6, label, control);
    line.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(control, Priority.ALWAYS);
    if (field.removable() && field.kind() != Field.Kind.CHOICE) {
      line.getChildren().add(leaveOut(leaveOut));
    }
    getChildren().add(line);
    if (!field.description().isEmpty()) {
      Tooltip.install(label, new Tooltip(field.description()));
      control.setAccessibleHelp(field.description());
    }
    show(field);
  }

  private Button leaveOut(Consumer<Field> leaveOut) {
    Button button = new Button("\u00d7");
    button.setAccessibleText(Words.of("sheet.leave.out", field.label()));
    button.setTooltip(new Tooltip(Words.of("sheet.leave.out", field.label())));
    button.getStyleClass().add("flat");
    button.setOnAction(event -> leaveOut.accept(field));
    return button;
  }

  private Region control(Field shown) {
    Region made =
        switch (shown.kind()) {
          case HEADING -> new Region();
          case TEXT -> text();
          case CHOICE, REFERENCE, VARIANT -> choice();
          case SWITCH -> yesOrNo();
        };
    made.setId("field-" + shown.path());
    made.setMaxWidth(Double.MAX_VALUE);
    return made;
  }

  private TextField text() {
    TextField text = new TextField();
    text.setOnAction(event -> commit(text.getText()));
    text.focusedProperty()
        .addListener(
            (focused, before, now) -> {
              if (!now) {
                commit(text.getText());
              }
            });
    text.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            takeBack();
            event.consume();
          }
        });
    return text;
  }

  private ComboBox<String> choice() {
    ComboBox<String> choice = new ComboBox<>();
    choice.setOnAction(event -> commit(String.valueOf(choice.getValue())));
    return choice;
  }

  private CheckBox yesOrNo() {
    CheckBox yes = new CheckBox();
    yes.setOnAction(event -> commit(String.valueOf(yes.isSelected())));
    return yes;
  }

  private void commit(String text) {
    if (!showing && !text.equals(field.text())) {
      fillIn.accept(field, text);
    } else if (!showing && isRefused()) {
      takeBack();
    }
  }

  private void takeBack() {
    show(field);
    takenBack.run();
  }

  /** Shows what the field holds now, but keeps what was refused until it is put right. */
  void follow(Field now) {
    if (isRefused() && now.text().equals(field.text())) {
      field = now;
    } else {
      show(now);
    }
  }

  /** Whether it holds something that was not taken over. */
  boolean isRefused() {
    return getChildren().contains(problem);
  }

  /** Shows what the field holds now; what was wrong before is forgotten. */
  void show(Field now) {
    showing = true;
    field = now;
    label.setText(now.label());
    control.setAccessibleText(now.label());
    if (control instanceof TextField text) {
      text.setText(now.text());
    } else if (control instanceof ComboBox<?> choice) {
      choose(choice, now);
    } else if (control instanceof CheckBox yes) {
      yes.setSelected(Boolean.parseBoolean(now.text()));
    }
    getChildren().remove(problem);
    control.getStyleClass().remove("field-wrong");
    if (now.kind() == Field.Kind.HEADING && !label.getStyleClass().contains("text-bold")) {
      label.getStyleClass().add("text-bold");
    }
    showing = false;
  }

  @SuppressWarnings("unchecked") // this class makes no other than those of texts
  private static void choose(ComboBox<?> choice, Field now) {
    ComboBox<String> texts = (ComboBox<String>) choice;
    texts.getItems().setAll(now.options());
    texts.setValue(now.text());
  }

  /** Says what is wrong with what was filled in. */
  void complain(String text) {
    problem.setText(text);
    if (!isRefused()) {
      getChildren().add(problem);
      control.getStyleClass().add("field-wrong");
    }
    control.setAccessibleText(field.label() + ": " + text);
  }

  /** Says below how far it can be changed; nothing where that is not known. */
  void limit(Optional<LimitLabel> limit) {
    getChildren().removeIf(LimitLabel.class::isInstance);
    limit.ifPresent(
        told -> {
          told.setId("limit-" + field.path());
          getChildren().add(told);
        });
    String description = field.description();
    control.setAccessibleHelp(
        limit.map(told -> (description + " " + told.getText()).strip()).orElse(description));
  }

  Field field() {
    return field;
  }

  Node control() {
    return control;
  }
}
