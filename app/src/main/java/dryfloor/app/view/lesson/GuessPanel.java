package dryfloor.app.view.lesson;

import dryfloor.analysis.outcome.Verdict;
import dryfloor.app.report.Answer;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Exercise;
import dryfloor.app.view.learn.Guess;
import dryfloor.model.element.Floor;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;

/** Asks what a failure does. */
final class GuessPanel extends VBox {

  private final List<LevelGuess> levels;
  private final ToggleGroup verdicts = new ToggleGroup();
  private final ComboBox<Floor> floors = new ComboBox<>();
  private final Button show = new Button(Words.of("learn.show"));

  /**
   * Asks.
   *
   * @param expecting is told the expected levels whenever they change
   * @param guessed is told the guess when it is finished
   */
  GuessPanel(
      Exercise exercise,
      GuessScene scene,
      Consumer<Map<String, Double>> expecting,
      Consumer<Guess> guessed) {
    super(10);
    levels =
        exercise.asked().stream()
            .map(vessel -> new LevelGuess(vessel, scene.name(vessel.id()), scene.yardstick()))
            .toList();
    levels.forEach(
        level -> level.value().addListener((value, before, now) -> expecting.accept(expected())));
    getChildren().add(wrapped(Words.of("learn.askLevels", scene.yardstick().unit())));
    getChildren().addAll(levels);
    getChildren().add(wrapped(Words.of("learn.askVerdict")));
    for (Verdict verdict : Verdict.values()) {
      getChildren().add(choice(verdict));
    }
    floors.getItems().setAll(exercise.drawing().floors());
    floors.setConverter(new FloorNames(scene));
    floors.setPromptText(Words.of("learn.whichFloor"));
    floors.setId("guess-floor");
    floors.setAccessibleText(floors.getPromptText());
    floors.setMaxWidth(Double.MAX_VALUE);
    floors.setDisable(true);
    floors.valueProperty().addListener((floor, before, now) -> allow());
    verdicts.selectedToggleProperty().addListener((verdict, before, now) -> allow());
    show.setId("guess-show");
    show.setDefaultButton(true);
    show.setDisable(true);
    show.setOnAction(event -> verdict().ifPresent(v -> guessed.accept(guess(v))));
    getChildren().addAll(floors, show);
  }

  private RadioButton choice(Verdict verdict) {
    Answer answer =
        switch (verdict) {
          case DRY -> Answer.DRY;
          case CAUGHT -> Answer.CAUGHT;
          case WET -> Answer.WET;
        };
    String meaning = Words.of("learn.verdict." + verdict);
    RadioButton choice = new RadioButton(answer.sign(true) + " " + answer.word() + ": " + meaning);
    choice.setWrapText(true);
    choice.setUserData(verdict);
    choice.setId("guess-" + verdict);
    choice.setToggleGroup(verdicts);
    return choice;
  }

  private Optional<Verdict> verdict() {
    return Optional.ofNullable(verdicts.getSelectedToggle())
        .map(toggle -> Verdict.class.cast(toggle.getUserData()));
  }

  private boolean isWet() {
    return verdict().equals(Optional.of(Verdict.WET));
  }

  private void allow() {
    floors.setDisable(!isWet());
    boolean floorMissing = isWet() && floors.getValue() == null;
    show.setDisable(verdict().isEmpty() || floorMissing);
  }

  /** The expected level of a vessel (m, elevation); nothing where it is not asked for. */
  Optional<Double> level(String vessel) {
    return find(vessel).map(LevelGuess::level);
  }

  /** Expects a level (m, elevation), between bottom and rim. */
  void expect(String vessel, double level) {
    find(vessel).ifPresent(guess -> guess.expect(level));
  }

  private Optional<LevelGuess> find(String vessel) {
    return levels.stream().filter(guess -> guess.id().equals(vessel)).findFirst();
  }

  private Map<String, Double> expected() {
    return levels.stream().collect(Collectors.toMap(LevelGuess::id, LevelGuess::level));
  }

  private Guess guess(Verdict verdict) {
    Optional<String> floor =
        isWet() ? Optional.ofNullable(floors.getValue()).map(Floor::id) : Optional.empty();
    return new Guess(expected(), verdict, floor);
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }
}
