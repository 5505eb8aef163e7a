package dryfloor.app.view;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Shape;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.Wording;
import dryfloor.app.view.panel.FailureListPanel;
import dryfloor.app.view.panel.StoryPanel;
import dryfloor.app.view.picture.PictureView;
import dryfloor.app.view.work.Work;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.Parent;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** One window: the failures on the left, the building in the middle, the story on the right. */
final class MainWindow {

  private final Work work;
  private final BorderPane root = new BorderPane();
  private final PictureView picture = new PictureView();
  private final StoryPanel story = new StoryPanel();
  private final SplitPane middle = new SplitPane();
  private final MenuBar menus = new MenuBar();
  private final VBox top = new VBox();

  MainWindow(Work work) {
    this.work = work;
    FailureListPanel failures = new FailureListPanel(work);
    failures.setPadding(new Insets(12));
    story.setPadding(new Insets(12));
    middle.getItems().setAll(failures, picture, story);
    middle.setDividerPositions(0.22, 0.76);
    SplitPane.setResizableWithParent(failures, false);
    SplitPane.setResizableWithParent(story, false);
    root.setCenter(middle);
    top.getChildren().setAll(menus);
    menus.getMenus().setAll(menus());
    root.setTop(top);
    work.answers().addListener((answers, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    work.moment().addListener((moment, before, now) -> show());
    show();
  }

  Parent root() {
    return root;
  }

  /** The menus, for those that concern more than the drawing. */
  MenuBar menuBar() {
    return menus;
  }

  /** What stands above the parts of the window: the menus first, then what it has to say. */
  VBox top() {
    return top;
  }

  /** The parts of the window, side by side. */
  SplitPane parts() {
    return middle;
  }

  private List<Menu> menus() {
    Menu edit =
        new Menu(
            Words.of("menu.edit"),
            null,
            item("edit.undo", "Shortcut+Z", work::undo),
            item("edit.redo", "Shortcut+Shift+Z", work::redo));
    Menu view =
        new Menu(
            Words.of("menu.view"),
            null,
            item("menu.view.fit", "Shortcut+0", picture::showAll),
            item("menu.view.closer", "Shortcut+PLUS", picture::closer),
            item("menu.view.farther", "Shortcut+MINUS", picture::farther));
    return List.of(edit, view);
  }

  private static MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }

  private void show() {
    Shown.of(work).ifPresent(this::show);
  }

  private void show(Shown shown) {
    Wording wording = Wording.of(shown.drawing(), Units.METRIC);
    Scene end = SceneWords.of(wording, shown.title(), shown.failed(), shown.outcome());
    double moment = work.moment().get();
    Scene now =
        Double.isInfinite(moment)
            ? end
            : SceneWords.at(moment, wording, shown.title(), shown.failed(), shown.outcome());
    BuildingPicture building = BuildingPicture.of(Plan.of(shown.drawing()), end);
    List<Shape> shapes = new ArrayList<>(building.shapes(now));
    shapes.addAll(building.labels());
    picture.show(shapes, building.width(), building.height());
    story.show(end, shown.word());
  }
}
