package dryfloor.app.view;

import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Shape;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.panel.ChangesPanel;
import dryfloor.app.view.panel.FailureListPanel;
import dryfloor.app.view.panel.StoryPanel;
import dryfloor.app.view.panel.WayWords;
import dryfloor.app.view.picture.EditingPicture;
import dryfloor.app.view.picture.FlowTip;
import dryfloor.app.view.picture.PictureView;
import dryfloor.app.view.sheet.DrawingPanel;
import dryfloor.app.view.time.LevelChart;
import dryfloor.app.view.time.Playback;
import dryfloor.app.view.time.TimeLine;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One window: the failures on the left, the building in the middle, the story on the right. */
final class MainWindow {

  /** Of the window; the building keeps the rest. */
  private static final double WIDEST_COLUMN = 0.32;

  private final Work work;
  private final BorderPane root = new BorderPane();
  private final PictureView picture = new PictureView();
  private final Selection selection;
  private final EditingPicture editing;
  private final DraftingMenus drafting;
  private final Looks looks;
  private final Playback playback;
  private final TimeLine timeLine;
  private final StoryPanel story;
  private final DrawingPanel drawn;
  private final SideTabs side;
  private final LevelChart chart;
  private Optional<Showing> showing = Optional.empty();

  /** Of which answer that is, where it is one to a failure. */
  private Optional<Basis> basis = Optional.empty();

  private final SplitPane middle = new SplitPane();
  private final MenuBar menus = new MenuBar();
  private final VBox top = new VBox();

  /** An answer to a failure of a drawing. */
  private record Basis(Installation drawing, FailureResult looked) {}

  MainWindow(Work work, Looks shared) {
    this.work = work;
    looks = shared.ofWindow();
    selection = new Selection(work);
    playback = new Playback(work);
    timeLine = new TimeLine(work, playback);
    story = new StoryPanel(work, playback, looks.units());
    chart = new LevelChart(work, story.levels().ticked());
    editing = new EditingPicture(picture, work, selection, looks.units());
    ChangesPanel changes = new ChangesPanel(work);
    FailureListPanel failures = new FailureListPanel(work, looks.units());
    failures.setPadding(new Insets(12));
    story.setPadding(new Insets(12));
    drawn = new DrawingPanel(work, selection, looks.units());
    drawn.setPadding(new Insets(12));
    side = new SideTabs(story, drawn);
    editing.setOnChosen(side::showDrawing);
    drafting =
        new DraftingMenus(
            work,
            selection,
            looks.units(),
            editing,
            problems -> {
              drawn.complain(problems);
              side.showDrawing();
            });
    VBox left = new VBox(failures, changes);
    VBox.setVgrow(failures, Priority.ALWAYS);
    changes.setPadding(new Insets(0, 12, 12, 12));
    middle
        .getItems()
        .setAll(left, new BorderPane(editing, null, null, new VBox(chart, timeLine), null), side);
    giveRoom();
    SplitPane.setResizableWithParent(left, false);
    SplitPane.setResizableWithParent(side, false);
    root.setCenter(middle);
    top.getChildren().setAll(menus);
    menus.getMenus().setAll(menus());
    root.setTop(top);
    Label stale = new Staleness(work, failures, story).word();
    StackPane.setAlignment(stale, Pos.TOP_CENTER);
    editing.getChildren().add(stale);
    work.installation().addListener((drawing, before, now) -> show());
    work.answers()
        .addListener(
            (answers, before, now) -> {
              if (showing.isEmpty() || !(goesOn(before, now) || isShownAlready(now))) {
                show();
              }
            });
    work.ahead().addListener((ahead, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    work.moment().addListener((moment, before, now) -> showMoment());
    playback.playing().addListener((playing, before, now) -> showMoment());
    story.story().told().addListener((told, before, now) -> showMoment());
    looks.units().addListener((units, before, now) -> show());
    looks.dark().addListener((dark, before, now) -> showLooks());
    looks
        .letters()
        .addListener(
            (letters, before, now) -> {
              showLooks();
              giveRoom();
              show();
            });
    root.getStylesheets().add(MainWindow.class.getResource("view.css").toExternalForm());
    FlowTip tip = new FlowTip(picture);
    picture.addEventHandler(MouseEvent.MOUSE_MOVED, event -> tellFlow(tip, event));
    showLooks();
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

  /** What is shown, where answers are known. */
  Optional<Showing> showing() {
    return showing;
  }

  /** Chooses what a problem of the drawing is about, and shows its field. */
  void goTo(Problem problem) {
    side.showDrawing();
    drawn.goTo(problem);
  }

  /** Gives the keys to the building. */
  void focusPicture() {
    picture.requestFocus();
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
    edit.getItems().addAll(drafting.edit());
    Menu view =
        new Menu(
            Words.of("menu.view"),
            null,
            item("menu.view.fit", "Shortcut+0", picture::showAll),
            item("menu.view.closer", "Shortcut+PLUS", picture::closer),
            item("menu.view.farther", "Shortcut+MINUS", picture::farther));
    view.getItems().addAll(new LooksMenu(looks).items());
    return List.of(edit, drafting.insert(), view, time());
  }

  private static MenuItem item(String key, String keys, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> action.run());
    return item;
  }

  private Menu time() {
    return new Menu(
        Words.of("menu.time"),
        null,
        item("time.play.or.pause", "Alt+P", playback::playOrPause),
        item("time.previous", "Alt+LEFT", playback::previous),
        item("time.next", "Alt+RIGHT", playback::next),
        item("time.start", "Alt+HOME", () -> playback.goTo(0)),
        item("time.end", "Alt+END", () -> playback.goTo(Double.POSITIVE_INFINITY)));
  }

  /** Whether only more failures have been answered: what is shown stays as it is. */
  private static boolean goesOn(Answers before, Answers now) {
    return before instanceof Answers.Known
        && now instanceof Answers.Known
        && !before.isWhole()
        && before.installation().equals(now.installation());
  }

  /**
   * Whether this answer is on the screen already, as one that was worked out ahead of the others.
   */
  private boolean isShownAlready(Answers now) {
    return now instanceof Answers.Known known
        && known.isWhole()
        && basis.isPresent()
        && basis.equals(
            work.chosenIn(known).map(looked -> new Basis(known.installation(), looked)));
  }

  /** Larger letters need wider columns of words. */
  private void giveRoom() {
    double wider = Math.sqrt(looks.enlargement());
    middle.setDividerPositions(
        Math.min(WIDEST_COLUMN, 0.22 * wider), 1 - Math.min(WIDEST_COLUMN, 0.24 * wider));
  }

  /** Another answer: told, painted and put on the line of time anew. */
  private void show() {
    Optional<Answers.Known> fresh = work.fresh();
    basis =
        fresh.flatMap(
            known -> work.chosenIn(known).map(looked -> new Basis(known.installation(), looked)));
    if (fresh.isPresent()) {
      Showing next = Showing.of(fresh.get(), work.chosenIn(fresh.get()), looks);
      showing = Optional.of(next);
      timeLine.show(next.film());
      chart.show(next.film());
      next.silence()
          .ifPresentOrElse(
              silence -> story.show(next.film(), next.word(), silence.title(), silence.reason()),
              () -> story.show(next.film(), next.word()));
      editing.show(next.building());
      showMoment();
    } else {
      showing = Optional.empty();
      showDraft();
    }
  }

  /** The present drawing while nothing is known of it: as it is drawn, without a failure. */
  private void showDraft() {
    Installation drawing = work.installation().get();
    Wording wording = Wording.of(drawing, looks.units().get());
    Scene scene = DraftScene.of(wording, drawing.name(), Staleness.sentence(work));
    BuildingPicture building = BuildingPicture.of(Plan.of(drawing), scene, looks.enlargement());
    picture.show(building.shapes(scene), building.width(), building.height());
    editing.show(building);
  }

  /** Another moment: only what moves is painted anew. */
  private void showMoment() {
    showing.ifPresent(
        shown -> {
          Scene now = shown.film().at(work.moment().get());
          List<Shape> target =
              Optional.ofNullable(story.story().told().get())
                  .map(told -> target(shown.building(), told.event()))
                  .orElse(List.of());
          List<Shape> shapes = shown.building().shapes(now, travelled(), target);
          picture.show(shapes, shown.building().width(), shown.building().height());
          story.showMoment(now, shown.film());
        });
  }

  /** How far marks have gone with the water; none where nothing is to move by itself. */
  private OptionalDouble travelled() {
    return looks.still().get() ? OptionalDouble.empty() : playback.travelled();
  }

  /** Where a sentence of the story belongs: what it happened to, or the other that matters. */
  private static List<Shape> target(BuildingPicture building, StoryEvent event) {
    List<Shape> target = building.target(event.subject());
    return target.isEmpty() ? building.target(event.other()) : target;
  }

  /** What flows in the run under the mouse, in words. */
  private void tellFlow(FlowTip tip, MouseEvent event) {
    showing.ifPresent(
        shown ->
            tip.show(
                shown
                    .building()
                    .idAt(picture.paperX(event.getX()), picture.paperY(event.getY()))
                    .flatMap(
                        id ->
                            WayWords.of(
                                shown.film().at(work.moment().get()),
                                shown.film().wording().names(),
                                id)),
                event.getScreenX(),
                event.getScreenY()));
  }

  private void showLooks() {
    root.setStyle("-fx-font-size: " + looks.letters().get() + "px;");
    picture.setDark(looks.dark().get());
  }
}
