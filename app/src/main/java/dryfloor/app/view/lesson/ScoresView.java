package dryfloor.app.view.lesson;

import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Score;
import dryfloor.app.view.learn.Scores;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What was earned in every set of exercises, best and last; any of it can be forgotten. */
public final class ScoresView extends ScrollPane {

  private final Supplier<Scores> scores;
  private final Consumer<String> forget;
  private final VBox all = new VBox(12);
  private final Button back = new Button(Words.of("learn.scores.back"));

  /**
   * Shows scores.
   *
   * @param forget takes the name of a set whose scores are to be forgotten
   * @param leave goes back to the drawing
   */
  public ScoresView(Supplier<Scores> scores, Consumer<String> forget, Runnable leave) {
    this.scores = scores;
    this.forget = forget;
    back.setId("scores-back");
    back.setCancelButton(true);
    back.setOnAction(event -> leave.run());
    all.setPadding(new Insets(24));
    setContent(all);
    setFitToWidth(true);
    setId("scores");
    show();
  }

  private void show() {
    Label title = new Label(Words.of("learn.scores.title"));
    title.getStyleClass().add("title-3");
    all.getChildren().setAll(title);
    Map<String, Score> sets = scores.get().sets();
    if (sets.isEmpty()) {
      all.getChildren().add(wrapped(Words.of("learn.scores.none"), "scores-none"));
    }
    List<Map.Entry<String, Score>> lastFirst = List.copyOf(sets.entrySet()).reversed();
    for (int i = 0; i < lastFirst.size(); i++) {
      all.getChildren().add(line(i, lastFirst.get(i).getKey(), lastFirst.get(i).getValue()));
    }
    all.getChildren().add(back);
  }

  private Node line(int number, String set, Score score) {
    Label name = wrapped(set, "scores-set-" + number);
    name.getStyleClass().add("text-bold");
    VBox words = new VBox(2, name, wrapped(ScoreWords.of(score), "scores-score-" + number));
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button forgetting = new Button(Words.of("learn.forget"));
    forgetting.setId("scores-forget-" + number);
    forgetting.setMinWidth(Region.USE_PREF_SIZE);
    forgetting.setAccessibleText(Words.of("learn.forget.spoken", set));
    forgetting.setOnAction(
        event -> {
          forget.accept(set);
          show();
          back.requestFocus();
        });
    return new HBox(12, words, forgetting);
  }

  private static Label wrapped(String text, String id) {
    Label label = new Label(text);
    label.setId(id);
    label.setWrapText(true);
    return label;
  }
}
