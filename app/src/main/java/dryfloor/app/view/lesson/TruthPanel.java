package dryfloor.app.view.lesson;

import dryfloor.app.drawing.Scene;
import dryfloor.app.view.Words;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** What really happened: the verdict in one sentence, the story, the levels. */
public final class TruthPanel extends ScrollPane {

  private final Label verdict = new Label();
  private final Label sentence = new Label();
  private final VBox moments = new VBox(6);
  private final VBox levels = new VBox(4);

  /** Nothing told yet. */
  public TruthPanel() {
    verdict.setId("verdict");
    verdict.getStyleClass().add("title-3");
    sentence.setId("sentence");
    VBox all = new VBox(10, verdict, sentence, heading("story.title"), moments);
    all.getChildren().addAll(heading("story.levels"), levels);
    for (Label label : List.of(verdict, sentence)) {
      label.setWrapText(true);
    }
    setContent(all);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
  }

  private static Label heading(String key) {
    Label heading = new Label(Words.of(key));
    heading.getStyleClass().add("title-4");
    return heading;
  }

  /**
   * Tells a scene.
   *
   * @param word of the verdict
   */
  public void show(Scene scene, String word) {
    verdict.setText(scene.sign() + " " + word + "  " + scene.subtitle());
    sentence.setText(scene.sentence());
    moments
        .getChildren()
        .setAll(
            scene.story().stream()
                .map(moment -> wrapped(moment.time() + "  " + moment.sentence()))
                .toList());
    levels
        .getChildren()
        .setAll(
            scene.levels().stream()
                .map(
                    line -> wrapped(line.name() + "  " + line.before() + " \u2192 " + line.after()))
                .toList());
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }
}
