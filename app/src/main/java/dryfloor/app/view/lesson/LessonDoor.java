package dryfloor.app.view.lesson;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Course;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.VBox;

/** Before a lesson: answers its drawings beside the screen, shows how far it is, can be left. */
public final class LessonDoor extends VBox {

  private static final double BAR = 320;

  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = new Label(Words.of("learn.preparing"));
  private final AtomicBoolean left = new AtomicBoolean();

  /**
   * Begins to answer.
   *
   * @param ready gets the course, on the screen's thread
   * @param leave is called when nobody wants to wait
   */
  public LessonDoor(List<Installation> drawings, Consumer<Course> ready, Runnable leave) {
    super(12);
    setAlignment(Pos.CENTER);
    bar.setPrefWidth(BAR);
    bar.setAccessibleText(words.getText());
    words.setWrapText(true);
    words.setId("lesson-door");
    Button cancel = new Button(Words.of("learn.leave"));
    cancel.setCancelButton(true);
    cancel.setOnAction(
        event -> {
          left.set(true);
          leave.run();
        });
    getChildren().setAll(words, bar, cancel);
    Thread.ofPlatform().daemon().name("lesson").start(() -> answer(drawings, ready));
  }

  private void answer(List<Installation> drawings, Consumer<Course> ready) {
    try {
      List<SweepResult> answers = new ArrayList<>();
      for (Installation drawing : drawings) {
        double before = (double) answers.size() / drawings.size();
        answers.add(
            Sweep.everyFailure(
                drawing,
                Runtime.getRuntime().availableProcessors(),
                watching(before, 1.0 / drawings.size())));
      }
      Course course = Course.from(answers);
      Platform.runLater(() -> open(course, ready));
    } catch (BaselineProblem problem) {
      Platform.runLater(() -> refuse(String.valueOf(problem.getMessage())));
    } catch (CancellationException cancelled) {
      // Nobody waits any more.
    }
  }

  private void open(Course course, Consumer<Course> ready) {
    if (course.exercises().isEmpty()) {
      refuse(Words.of("learn.nothing"));
    } else if (!left.get()) {
      ready.accept(course);
    }
  }

  private void refuse(String reason) {
    words.setText(Words.of("learn.refused", reason));
    bar.setVisible(false);
  }

  private Progress watching(double before, double share) {
    return new Progress() {
      @Override
      public void finished(int done, int of) {
        Platform.runLater(
            () -> bar.setProgress(Math.max(bar.getProgress(), before + share * done / of)));
      }

      @Override
      public boolean cancelled() {
        return left.get();
      }
    };
  }
}
