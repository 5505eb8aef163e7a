package dryfloor.app.view;

import javafx.scene.control.Menu;

/** Papers to hand over, and what comes back on them. */
final class PapersMenu {

  private PapersMenu() {}

  static Menu of(Program program, DrawingWindow window) {
    PaperDesk desk = new PaperDesk(program, window);
    Menu menu = new Menu(Words.of("papers.menu"));
    menu.setId("menu-papers");
    menu.getItems()
        .setAll(
            MenuEntry.of("papers.write", "Shortcut+P", desk::write),
            MenuEntry.of("papers.choose", "Shortcut+Shift+P", desk::writeAsChosen),
            MenuEntry.of("papers.measured", "Shortcut+M", desk::enterMeasured));
    return menu;
  }
}
