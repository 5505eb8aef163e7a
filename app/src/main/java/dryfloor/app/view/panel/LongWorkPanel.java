package dryfloor.app.view.panel;

import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.util.Duration;

/**
 * How far the answers are, once they take long enough for anybody to wonder, with a way to stop and
 * to go on. It takes no room otherwise.
 */
public final class LongWorkPanel extends HBox {

  private static final Duration LONG = Duration.seconds(2);

  private final Work work;
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = new Label(Words.of("work.answering"));
  private final Button stop = new Button(Words.of("work.stop"));
  private final Button again = new Button(Words.of("work.again"));
  private final PauseTransition patience = new PauseTransition(LONG);

  /** The work of a window. */
  public LongWorkPanel(Work work) {
    super(10);
    this.work = work;
    setAlignment(Pos.CENTER_LEFT);
    setPadding(new Insets(4, 12, 4, 12));
    setId("long-work");
    stop.setId("long-work-stop");
    again.setId("long-work-again");
    bar.setAccessibleText(words.getText());
    stop.setOnAction(event -> work.stopAnswering());
    again.setOnAction(event -> work.answerAgain());
    patience.setOnFinished(event -> show(true));
    show(false);
    work.progress().addListener((progress, before, now) -> show(now.doubleValue()));
    work.answers()
        .addListener(
            (answers, before, now) -> {
              if (now.isWhole()) {
                show(false);
              }
            });
    show(work.progress().get());
  }

  private void show(double progress) {
    bar.setProgress(progress);
    if (progress >= 1) {
      patience.stop();
      boolean stopped = work.isStale() || !work.answers().get().isWhole();
      tell(stopped);
      show(stopped);
    } else if (!isVisible() || !isAnswering()) {
      tell(false);
      patience.play();
    }
  }

  private boolean isAnswering() {
    return getChildren().contains(stop);
  }

  private void tell(boolean stopped) {
    words.setText(Words.of(stopped ? "work.stopped" : "work.answering"));
    if (stopped) {
      getChildren().setAll(words, again);
    } else {
      getChildren().setAll(words, bar, stop);
    }
  }

  private void show(boolean shown) {
    setVisible(shown);
    setManaged(shown);
  }
}
