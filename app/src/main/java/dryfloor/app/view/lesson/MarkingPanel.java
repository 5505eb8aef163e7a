package dryfloor.app.view.lesson;

import dryfloor.app.report.Answer;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Marking;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What a guess was worth and why, each right and wrong with a sign and a word. */
final class MarkingPanel extends VBox {

  MarkingPanel(Marking marking, GuessScene scene, Runnable again, Runnable next) {
    super(8);
    Label points = wrapped(Words.of("learn.points", marking.points()));
    points.getStyleClass().add("title-3");
    points.setId("marking-points");
    getChildren().addAll(points, verdict(marking), floor(marking, scene));
    getChildren()
        .add(
            wrapped(
                Words.of(
                    "learn.levels",
                    marking.levelPoints(),
                    Marking.FOR_LEVELS,
                    scene.amounts().level(Marking.RIGHT),
                    scene.amounts().level(Marking.WRONG))));
    marking.levels().forEach(level -> getChildren().add(level(level, scene)));
    getChildren()
        .add(
            new HBox(
                8,
                button("learn.again", "marking-again", again),
                button("learn.next", "marking-next", next)));
  }

  private static Label verdict(Marking marking) {
    Answer truth = Answer.of(marking.exercise().outcome());
    String said = marking.guess().verdict().name();
    return marking.isVerdictRight()
        ? wrapped(Words.of("learn.verdictRight", said, Marking.FOR_VERDICT))
        : wrapped(Words.of("learn.verdictWrong", said, truth.word()));
  }

  private static Label floor(Marking marking, GuessScene scene) {
    String said =
        marking.guess().floor().map(scene::name).orElseGet(() -> Words.of("learn.noFloor"));
    Optional<String> wettest = marking.wettest();
    String truth = wettest.map(scene::name).orElseGet(() -> Words.of("learn.noFloor"));
    return marking.isFloorRight()
        ? wrapped(Words.of("learn.floorRight", said, Marking.FOR_FLOOR))
        : wrapped(Words.of("learn.floorWrong", said, truth));
  }

  private static Label level(Marking.LevelMark level, GuessScene scene) {
    String key = level.isRight() ? "learn.levelRight" : "learn.levelWrong";
    String off = scene.amounts().levelChange(level.difference());
    Label label = wrapped(Words.of(key, scene.name(level.vessel()), off));
    label.setId("marking-" + level.vessel());
    return label;
  }

  private static Button button(String key, String id, Runnable action) {
    Button button = new Button(Words.of(key));
    button.setId(id);
    button.setOnAction(event -> action.run());
    return button;
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }
}
