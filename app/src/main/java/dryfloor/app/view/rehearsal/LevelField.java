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

/** What is measured in one vessel: its name, a field for the depth below its rim, what is right. */
final class LevelField {

  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.,]+");

  private final Wording wording;
  private final RehearsalStep.ExpectedLevel level;
  private final Label label;
  private final TextField typed = new TextField();
  private final Label expected;

  /** What a field says. */
  sealed interface Entry {
    /** It is empty: this vessel was not measured. */
    record Nothing() implements Entry {}

    /** It is no depth. */
    record Wrong() implements Entry {}

    /** A depth. */
    record Measured(RehearsalRecord.Level level) implements Entry {}
  }

  LevelField(Wording wording, RehearsalStep.ExpectedLevel level) {
    this.wording = wording;
    this.level = level;
    label = new Label(wording.names().label(level.vessel()));
    label.setLabelFor(typed);
    typed.setId("measured-" + level.vessel());
    typed.setPromptText(Words.of("measured.prompt", unit()));
    typed.textProperty().addListener((text, before, now) -> typed.setStyle(""));
    expected =
        new Label(Words.of("measured.expected", wording.amounts().level(expectedBelowRim())));
  }

  Label label() {
    return label;
  }

  TextField typed() {
    return typed;
  }

  Label expected() {
    return expected;
  }

  /** Reads the field; what is wrong in it is marked. */
  Entry read(String by) {
    String text = typed.getText().strip();
    if (text.isEmpty()) {
      return new Entry.Nothing();
    }
    OptionalDouble depth = depth(text);
    if (depth.isEmpty()) {
      typed.setStyle("-fx-border-color: #b00020; -fx-border-width: 2;");
      return new Entry.Wrong();
    }
    return new Entry.Measured(
        new RehearsalRecord.Level(level.vessel(), expectedBelowRim(), depth.getAsDouble(), by));
  }

  /** With a unit of its own, or in that of the form. */
  private OptionalDouble depth(String text) {
    boolean bare = NUMBER.matcher(text).matches();
    return switch (QuantityText.parse(QuantityKind.LENGTH, bare ? text + " " + unit() : text)) {
      case QuantityText.Parsed.Value value -> OptionalDouble.of(value.inside());
      case QuantityText.Parsed.Unfit unfit -> OptionalDouble.empty();
    };
  }

  private double expectedBelowRim() {
    return level.rim() - level.expected();
  }

  private String unit() {
    return switch (wording.amounts().units()) {
      case METRIC -> "mm";
      case US -> "in";
    };
  }
}
