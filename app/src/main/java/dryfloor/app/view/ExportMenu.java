package dryfloor.app.view;

import javafx.scene.control.Menu;

/** Writes what is seen to files of other kinds. */
final class ExportMenu {

  private ExportMenu() {}

  static Menu of(Program program, DrawingWindow window) {
    Exporter exporter = new Exporter(program, window);
    Menu menu = new Menu(Words.of("export.menu"));
    menu.getItems()
        .setAll(
            MenuEntry.of("export.svg", exporter::svg),
            MenuEntry.of("export.png", exporter::png),
            MenuEntry.of("export.csv", exporter::csv));
    return menu;
  }
}
