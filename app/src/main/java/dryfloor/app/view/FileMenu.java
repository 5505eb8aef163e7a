package dryfloor.app.view;

import dryfloor.app.shipped.Template;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What can be done with the file of a window. */
final class FileMenu {

  private final Program program;
  private final DrawingWindow window;

  private FileMenu(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  static Menu of(Program program, DrawingWindow window) {
    return new FileMenu(program, window).menu();
  }

  private Menu menu() {
    FileDesk desk = window.desk();
    Menu menu = new Menu(Words.of("menu.file"));
    menu.setId("menu-file");
    Menu recent = new Menu(Words.of("file.recent"));
    recent.getItems().setAll(recent());
    menu.setOnShowing(showing -> recent.getItems().setAll(recent()));
    menu.getItems()
        .setAll(
            MenuEntry.of("file.new", "Shortcut+N", () -> begin(Template.CELLAR_SUMP)),
            templates(),
            new SeparatorMenuItem(),
            MenuEntry.of("menu.file.open", "Shortcut+O", () -> desk.open(false)),
            MenuEntry.of("file.openInNew", "Shortcut+Shift+O", () -> desk.open(true)),
            recent,
            new SeparatorMenuItem(),
            MenuEntry.of("file.save", "Shortcut+S", window.saves()::save),
            MenuEntry.of("file.saveAs", "Shortcut+Shift+S", window.saves()::saveAs),
            new SeparatorMenuItem(),
            ExportMenu.of(program, window),
            new SeparatorMenuItem(),
            MenuEntry.of("file.close", "Shortcut+W", window.saves()::close),
            MenuEntry.of("file.quit", "Shortcut+Q", program::quit));
    return menu;
  }

  private Menu templates() {
    Menu templates = new Menu(Words.of("file.template"));
    Arrays.stream(Template.values())
        .map(template -> MenuEntry.named(template.description(), () -> begin(template)))
        .forEach(templates.getItems()::add);
    return templates;
  }

  private void begin(Template template) {
    program.newWindow(Begun.with(template.content()));
  }

  private List<MenuItem> recent() {
    List<Path> paths = program.recent().paths();
    if (paths.isEmpty()) {
      MenuItem none = MenuEntry.of("file.noRecent", () -> {});
      none.setDisable(true);
      return List.of(none);
    }
    List<MenuItem> items = new ArrayList<>();
    paths.forEach(
        path -> items.add(MenuEntry.named(path.toString(), () -> window.desk().open(path, false))));
    items.add(new SeparatorMenuItem());
    items.add(MenuEntry.of("file.forgetRecent", program::forgetRecent));
    return items;
  }
}
