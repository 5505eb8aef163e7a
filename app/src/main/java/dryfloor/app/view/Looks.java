package dryfloor.app.view;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import dryfloor.app.view.file.Appearance;
import dryfloor.model.unit.Units;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.text.Font;

/** How the program looks to its reader: light or dark, in which units, with how large letters. */
public final class Looks {

  /** Letters of the theme (points) where the system asks for its usual size. */
  private static final double USUAL = 14;

  /** The usual size of a system's own letters (points). */
  private static final double SYSTEM_USUAL = 13;

  private static final double SMALLEST = 10;
  private static final double LARGEST = 32;
  private static final double ONE_STEP = 1.15;

  private final BooleanProperty dark = new SimpleBooleanProperty(false);
  private final ObjectProperty<Units> units = new SimpleObjectProperty<>(Units.METRIC);
  private final DoubleProperty letters =
      new SimpleDoubleProperty(limited(USUAL * Font.getDefault().getSize() / SYSTEM_USUAL));

  private final ObjectProperty<Optional<Boolean>> chosenStill =
      new SimpleObjectProperty<>(Optional.empty());
  private final BooleanProperty systemStill = new SimpleBooleanProperty(false);
  private final BooleanBinding still =
      Bindings.createBooleanBinding(
          () -> chosenStill.get().orElse(systemStill.get()), chosenStill, systemStill);

  /** Light and metric, with letters as large as the system's. */
  public Looks() {}

  /** As it was last. */
  Looks(Optional<Appearance> last) {
    last.ifPresent(
        look -> {
          dark.set(look.dark());
          units.set(look.units());
          letters.set(limited(look.letters()));
          chosenStill.set(look.still());
        });
  }

  /** How it looks now, to be remembered. */
  Appearance appearance() {
    return new Appearance(dark.get(), units.get(), letters.get(), chosenStill.get());
  }

  /** Does something whenever it looks different. */
  void whenChanged(Runnable action) {
    dark.addListener((property, before, now) -> action.run());
    units.addListener((property, before, now) -> action.run());
    letters.addListener((property, before, now) -> action.run());
    chosenStill.addListener((property, before, now) -> action.run());
  }

  /**
   * The looks as one window knows them: the same at any time, whoever changes them, and forgotten
   * with the window.
   */
  Looks ofWindow() {
    Looks own = new Looks();
    own.dark.bindBidirectional(dark);
    own.units.bindBidirectional(units);
    own.letters.bindBidirectional(letters);
    own.chosenStill.bindBidirectional(chosenStill);
    own.systemStill.bindBidirectional(systemStill);
    return own;
  }

  /** Puts the theme on every window of the program, now and whenever it changes. */
  void rule() {
    useTheme();
    Platform.getPreferences().reducedMotionProperty().subscribe(systemStill::set);
    dark.subscribe(this::useTheme);
  }

  private void useTheme() {
    Application.setUserAgentStylesheet(
        (dark.get() ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
  }

  /** Whether letters are light on dark ground. */
  public BooleanProperty dark() {
    return dark;
  }

  /**
   * Whether water that flows is shown without motion: as was chosen, else as the system asks for.
   */
  public ObservableBooleanValue still() {
    return still;
  }

  /** Shows water that flows without motion, or with it, whatever the system asks for. */
  void chooseStill(boolean chosen) {
    chosenStill.set(Optional.of(chosen));
  }

  public ObjectProperty<Units> units() {
    return units;
  }

  /** Size of the letters (points). */
  public DoubleProperty letters() {
    return letters;
  }

  /** How many times as large as usual the letters are. */
  public double enlargement() {
    return letters.get() / USUAL;
  }

  void largerLetters() {
    letters.set(limited(letters.get() * ONE_STEP));
  }

  void smallerLetters() {
    letters.set(limited(letters.get() / ONE_STEP));
  }

  private static double limited(double size) {
    return Math.clamp(size, SMALLEST, LARGEST);
  }
}
