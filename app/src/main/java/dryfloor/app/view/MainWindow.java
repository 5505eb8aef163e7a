package dryfloor.app.view;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Shape;
import dryfloor.app.report.Answer;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.Wording;
import dryfloor.app.view.panel.FailureListPanel;
import dryfloor.app.view.panel.StoryPanel;
import dryfloor.app.view.picture.PictureView;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Parent;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;

/** One window: the failures on the left, the building in the middle, the story on the right. */
final class MainWindow {

  private final Work work;
  private final BorderPane root = new BorderPane();
  private final PictureView picture = new PictureView();
  private final StoryPanel story = new StoryPanel();

  /** What is shown: an outcome and what it is called. */
  private record Shown(
      Installation drawing, String title, List<String> failed, Outcome outcome, String word) {}

  MainWindow(Work work) {
    this.work = work;
    FailureListPanel failures = new FailureListPanel(work);
    failures.setPadding(new Insets(12));
    story.setPadding(new Insets(12));
    SplitPane middle = new SplitPane(failures, picture, story);
    middle.setDividerPositions(0.22, 0.76);
    SplitPane.setResizableWithParent(failures, false);
    SplitPane.setResizableWithParent(story, false);
    root.setCenter(middle);
    root.setTop(menus());
    work.answers().addListener((answers, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    work.moment().addListener((moment, before, now) -> show());
    show();
  }

  Parent root() {
    return root;
  }

  private MenuBar menus() {
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
    return new MenuBar(edit, view);
  }

  private static MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }

  private void show() {
    shown().ifPresent(this::show);
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

  private Optional<Shown> shown() {
    if (!(work.answers().get() instanceof Answers.Known known)) {
      return Optional.empty();
    }
    Installation drawing = known.installation();
    Outcome normal = known.sweep().normal();
    return Optional.of(
        work.chosenResult()
            .flatMap(result -> failed(drawing, result))
            .orElseGet(
                () ->
                    new Shown(
                        drawing,
                        Words.of("list.normal"),
                        List.of(),
                        normal,
                        Answer.of(normal).word())));
  }

  private static Optional<Shown> failed(Installation drawing, FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered ->
          Optional.of(
              new Shown(
                  drawing,
                  FailureNames.name(answered.failure(), drawing),
                  FailureTraits.components(answered.failure()),
                  answered.outcome(),
                  Answer.of(answered.outcome()).word()));
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }
}
