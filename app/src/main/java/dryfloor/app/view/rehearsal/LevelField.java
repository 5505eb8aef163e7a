package dryfloor.app.view.rehearsal;

import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;

/**
 * What is measured in one vessel: its name, fields for the depth below its rim before and once all
 * is still, and what is right.
 */
final class LevelField {

  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.,]+");

  private final Wording wording;
  private final RehearsalStep.ExpectedLevel level;
  private final Label label;
  private final TextField typedBefore;
  private final Label expectedBefore;
  private final TextField typed;
  private final Label expected;

  /** What a field says. */
  sealed interface Entry {
    /** It is empty: this vessel was not measured. */
    record Nothing() implements Entry {}

    /** What is in it is no depth, or only the level before was measured. */
    record Wrong() implements Entry {}

    /** A depth. */
    record Measured(RehearsalRecord.Level level) implements Entry {}
  }

  LevelField(Wording wording, RehearsalStep.ExpectedLevel level) {
    this.wording = wording;
    this.level = level;
    label = new Label(wording.names().label(level.vessel()));
    typedBefore = field("measured-before-", "measured.promptBefore");
    expectedBefore =
        new Label(
            Words.of(
                "measured.expectedBefore", wording.amounts().level(level.rim() - level.before())));
    typed = field("measured-", "measured.prompt");
    label.setLabelFor(typed);
    expected =
        new Label(
            Words.of("measured.expected", wording.amounts().level(level.rim() - level.expected())));
  }

  private TextField field(String id, String prompt) {
    TextField field = new TextField();
    field.setId(id + level.vessel());
    field.setPromptText(Words.of(prompt, unit()));
    field.setAccessibleText(wording.names().label(level.vessel()) + ", " + field.getPromptText());
    field.textProperty().addListener((text, before, now) -> field.setStyle(""));
    return field;
  }

  Label label() {
    return label;
  }

  TextField typedBefore() {
    return typedBefore;
  }

  Label expectedBefore() {
    return expectedBefore;
  }

  TextField typed() {
    return typed;
  }

  Label expected() {
    return expected;
  }

  /** Reads the fields; what is wrong in them is marked. */
  Entry read(String by) {
    OptionalDouble before = depth(typedBefore);
    OptionalDouble after = depth(typed);
    boolean wrongBefore = wrong(typedBefore, before);
    boolean wrongAfter = wrong(typed, after);
    if (wrongBefore || wrongAfter) {
      return new Entry.Wrong();
    }
    if (after.isPresent()) {
      return new Entry.Measured(RehearsalRecord.Level.of(level, before, after.getAsDouble(), by));
    }
    if (before.isPresent()) {
      mark(typed);
      return new Entry.Wrong();
    }
    return new Entry.Nothing();
  }

  private static boolean wrong(TextField field, OptionalDouble depth) {
    boolean wrong = !field.getText().isBlank() && depth.isEmpty();
    if (wrong) {
      mark(field);
    }
    return wrong;
  }

  private static void mark(TextField field) {
    field.setStyle("-fx-border-color: #b00020; -fx-border-width: 2;");
  }

  private OptionalDouble depth(TextField field) {
    String text = field.getText().strip();
    return text.isEmpty() ? OptionalDouble.empty() : depth(text);
  }

  /** With a unit of its own, or in that of the form. */
  private OptionalDouble depth(String text) {
    boolean bare = NUMBER.matcher(text).matches();
    return switch (QuantityText.parse(QuantityKind.LENGTH, bare ? text + " " + unit() : text)) {
      case QuantityText.Parsed.Value value -> OptionalDouble.of(value.inside());
      case QuantityText.Parsed.Unfit unfit -> OptionalDouble.empty();
    };
  }

  private String unit() {
    return switch (wording.amounts().units()) {
      case METRIC -> "mm";
      case US -> "in";
    };
  }
}
