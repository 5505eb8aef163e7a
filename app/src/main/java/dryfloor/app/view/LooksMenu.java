package dryfloor.app.view;

import dryfloor.model.unit.Units;
import java.util.List;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCombination;

/** The part of the view's menu that changes how the program looks. */
final class LooksMenu {

  private final Looks looks;
  private final ToggleGroup units = new ToggleGroup();

  LooksMenu(Looks looks) {
    this.looks = looks;
  }

  List<MenuItem> items() {
    CheckMenuItem dark = new CheckMenuItem(Words.of("looks.dark"));
    dark.setId("dark");
    dark.setAccelerator(KeyCombination.valueOf("Shortcut+D"));
    dark.selectedProperty().bindBidirectional(looks.dark());
    return List.of(
        new SeparatorMenuItem(),
        dark,
        still(),
        item("looks.letters.larger", "Shortcut+Shift+PLUS", looks::largerLetters),
        item("looks.letters.smaller", "Shortcut+Shift+MINUS", looks::smallerLetters),
        new SeparatorMenuItem(),
        units("looks.metric", Units.METRIC),
        units("looks.us", Units.US));
  }

  private CheckMenuItem still() {
    CheckMenuItem still = new CheckMenuItem(Words.of("looks.still"));
    still.setId("still");
    still.setSelected(looks.still().get());
    still.setOnAction(event -> looks.chooseStill(still.isSelected()));
    looks.still().addListener((property, before, now) -> still.setSelected(now));
    return still;
  }

  private static MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }

  private RadioMenuItem units(String key, Units these) {
    RadioMenuItem item = new RadioMenuItem(Words.of(key));
    item.setToggleGroup(units);
    item.setSelected(looks.units().get() == these);
    item.setOnAction(event -> looks.units().set(these));
    looks.units().addListener((property, before, now) -> item.setSelected(now == these));
    return item;
  }
}
