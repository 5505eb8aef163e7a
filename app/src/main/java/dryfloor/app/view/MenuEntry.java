package dryfloor.app.view;

import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCombination;

/** Entries of menus. */
final class MenuEntry {

  private MenuEntry() {}

  static MenuItem of(String key, Runnable action) {
    return named(Words.of(key), action);
  }

  static MenuItem of(String key, String keys, Runnable action) {
    MenuItem item = of(key, action);
    item.setAccelerator(KeyCombination.valueOf(keys));
    return item;
  }

  /** With a text that is no word of the program. */
  static MenuItem named(String text, Runnable action) {
    MenuItem item = new MenuItem(text);
    item.setMnemonicParsing(false);
    item.setOnAction(event -> action.run());
    return item;
  }
}
