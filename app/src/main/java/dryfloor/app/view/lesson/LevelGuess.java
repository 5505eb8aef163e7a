package dryfloor.app.view.lesson;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.view.Words;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javafx.beans.property.DoubleProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The level of one vessel, to be dragged or typed as a height above its own floor. */
final class LevelGuess extends VBox {

  /** By which a key moves the level (m). */
  private static final double ONE_STEP = 5e-3;

  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,5}([.,][0-9]{1,2})?");

  private final Outcome.VesselOutcome vessel;
  private final Yardstick yardstick;
  private final Slider slider;
  private final TextField typed = new TextField();

  LevelGuess(Outcome.VesselOutcome vessel, String name, Yardstick yardstick) {
    super(2);
    this.vessel = vessel;
    this.yardstick = yardstick;
    double now = yardstick.reading(vessel.levelBefore() - vessel.bottom());
    slider = new Slider(0, yardstick.reading(vessel.rim() - vessel.bottom()), now);
    slider.setId("guess-" + vessel.id());
    slider.setAccessibleText(Words.of("learn.levelOf", name));
    slider.setBlockIncrement(yardstick.reading(ONE_STEP));
    typed.setId("guess-typed-" + vessel.id());
    typed.setAccessibleText(Words.of("learn.levelOf", name));
    typed.setPrefColumnCount(4);
    typed.setMinWidth(Region.USE_PREF_SIZE);
    typed.setOnAction(event -> take());
    typed.focusedProperty().addListener((focused, before, isNow) -> takeUnless(isNow));
    slider.valueProperty().addListener((value, before, after) -> write());
    write();
    HBox.setHgrow(slider, Priority.ALWAYS);
    Label title =
        new Label(Words.of("learn.level", name, yardstick.written(now), yardstick.unit()));
    title.setId("guess-title-" + vessel.id());
    title.setWrapText(true);
    Label unit = new Label(yardstick.unit());
    unit.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(8, slider, typed, unit);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().setAll(title, line);
  }

  private void takeUnless(boolean focused) {
    if (!focused) {
      take();
    }
  }

  /** What was typed, if it is a height; else what was there before stands. */
  private void take() {
    height(typed.getText()).ifPresent(slider::setValue);
    write();
  }

  private static OptionalDouble height(String text) {
    String number = text.strip();
    return NUMBER.matcher(number).matches()
        ? OptionalDouble.of(Double.parseDouble(number.replace(',', '.')))
        : OptionalDouble.empty();
  }

  private void write() {
    typed.setText(yardstick.written(slider.getValue()));
  }

  String id() {
    return vessel.id();
  }

  /** The level expected (m, elevation); untouched, exactly the one before. */
  double level() {
    double before = vessel.levelBefore() - vessel.bottom();
    double wanted = yardstick.metres(slider.getValue());
    return vessel.bottom() + (Math.abs(wanted - before) < 1e-9 ? before : wanted);
  }

  /** Expects a level (m, elevation), between bottom and rim. */
  void expect(double level) {
    double height = yardstick.reading(level - vessel.bottom());
    slider.setValue(Math.clamp(height, slider.getMin(), slider.getMax()));
  }

  DoubleProperty value() {
    return slider.valueProperty();
  }
}
