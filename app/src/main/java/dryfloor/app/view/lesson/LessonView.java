package dryfloor.app.view.lesson;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Shape;
import dryfloor.app.report.Answer;
import dryfloor.app.view.Looks;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Course;
import dryfloor.app.view.learn.Exercise;
import dryfloor.app.view.learn.Guess;
import dryfloor.app.view.learn.Marking;
import dryfloor.app.view.learn.Score;
import dryfloor.app.view.picture.PictureView;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** A course, one exercise after the other: guess, watch, read why. */
public final class LessonView extends BorderPane {

  private final PictureView picture = new PictureView();
  private final LevelHand hand = new LevelHand(picture);
  private final TruthPanel story = new TruthPanel();
  private final ScrollPane asking = new ScrollPane();
  private final SplitPane parts = new SplitPane();
  private final Looks looks;
  private final Optional<Score> before;
  private final Consumer<Course> marked;
  private final Runnable leave;
  private Course course;
  private Optional<Replay> replay = Optional.empty();

  /**
   * Begins with the first exercise that is not done.
   *
   * @param before what was earned in this set until now; none where it was not tried
   * @param marked is told the course after each exercise
   * @param leave ends the lesson
   */
  public LessonView(
      Course course, Looks looks, Optional<Score> before, Consumer<Course> marked, Runnable leave) {
    this.course = course;
    this.looks = looks;
    this.before = before;
    this.marked = marked;
    this.leave = leave;
    looks.dark().subscribe(picture::setDark);
    picture.setAccessibleText(Words.of("learn.picture"));
    asking.setFitToWidth(true);
    asking.setId("lesson");
    story.setPadding(new Insets(12));
    SplitPane.setResizableWithParent(asking, false);
    SplitPane.setResizableWithParent(story, false);
    setCenter(parts);
    showPresent();
  }

  /** The course as far as it is done. */
  public Course course() {
    return course;
  }

  private void showPresent() {
    stop();
    if (course.isDone()) {
      tell(title(Words.of("learn.done")), score(), earlier());
      parts.getItems().setAll(asking, picture);
    } else {
      ask(course.present());
    }
    parts.setDividerPositions(0.3);
  }

  private void ask(Exercise exercise) {
    GuessScene scene = new GuessScene(exercise, looks.units().get());
    Plan plan = Plan.of(exercise.drawing());
    GuessPanel panel =
        new GuessPanel(
            exercise,
            scene,
            levels -> show(plan, scene.expected(levels)),
            guess -> reveal(exercise, scene, guess));
    tell(
        new Label(Words.of("learn.number", course.marked().size() + 1, course.exercises().size())),
        score(),
        earlier(),
        new Label(exercise.drawing().name()),
        title(exercise.question()),
        panel);
    hand.ask(panel);
    show(plan, scene.expected(Map.of()));
    parts.getItems().setAll(asking, picture);
  }

  private void reveal(Exercise exercise, GuessScene scene, Guess guess) {
    hand.rest();
    Marking marking = Marking.of(exercise, guess);
    course = course.with(marking);
    marked.accept(course);
    story.show(scene.truth(), Answer.of(exercise.outcome()).word());
    BuildingPicture building =
        BuildingPicture.of(Plan.of(exercise.drawing()), scene.truth(), looks.enlargement());
    Replay playing =
        new Replay(
            exercise.outcome().trajectory(),
            (moment, travelled) -> show(building, scene.at(moment), marks(travelled)),
            () -> show(building, scene.truth()));
    replay = Optional.of(playing);
    tell(
        new Label(Words.of("learn.number", course.marked().size(), course.exercises().size())),
        score(),
        title(exercise.question()),
        new MarkingPanel(marking, scene, playing::play, this::showPresent));
    parts.getItems().setAll(asking, picture, story);
    parts.setDividerPositions(0.26, 0.74);
    playing.play();
  }

  private void tell(Node... nodes) {
    Button ending = new Button(Words.of("learn.leave"));
    ending.setId("lesson-leave");
    ending.setCancelButton(true);
    ending.setOnAction(event -> leave());
    VBox all = new VBox(10, nodes);
    all.getChildren().add(ending);
    all.setPadding(new Insets(12));
    all.getChildren().stream()
        .filter(Label.class::isInstance)
        .map(Label.class::cast)
        .forEach(label -> label.setWrapText(true));
    asking.setContent(all);
    asking.setVvalue(0);
  }

  private Label score() {
    Label score = new Label(Words.of("learn.score", course.points(), course.possible()));
    score.setId("lesson-score");
    return score;
  }

  private Label earlier() {
    Label earlier =
        new Label(before.map(ScoreWords::of).orElseGet(() -> Words.of("learn.score.none")));
    earlier.setId("lesson-earlier");
    return earlier;
  }

  private static Label title(String text) {
    Label title = new Label(text);
    title.setId("lesson-question");
    title.getStyleClass().add("title-3");
    return title;
  }

  private void show(Plan plan, Scene scene) {
    show(BuildingPicture.of(plan, scene, looks.enlargement()), scene);
  }

  /** None where nothing is to move by itself. */
  private OptionalDouble marks(double travelled) {
    return looks.still().get() ? OptionalDouble.empty() : OptionalDouble.of(travelled);
  }

  private void show(BuildingPicture building, Scene scene) {
    show(building, scene, OptionalDouble.empty());
  }

  private void show(BuildingPicture building, Scene scene, OptionalDouble travelled) {
    hand.show(building);
    List<Shape> shapes = building.shapes(scene, travelled);
    picture.show(shapes, building.width(), building.height());
  }

  private void leave() {
    stop();
    leave.run();
  }

  private void stop() {
    replay.ifPresent(Replay::stop);
    replay = Optional.empty();
  }
}
