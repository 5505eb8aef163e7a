package dryfloor.app.view.panel;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.app.view.Words;
import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.VBox;

/** Fills the window while something long is worked out beside the screen; it can be left. */
public final class WaitingRoom extends VBox {

  private static final double BAR = 320;

  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = new Label();
  private final AtomicBoolean left = new AtomicBoolean();

  /** What takes long; not on the screen's thread. */
  public interface Work<T> {
    /**
     * Works it out.
     *
     * @throws BaselineProblem if the drawing is not sound when all is well
     * @throws IOException if a file can't be read or written
     */
    T result(Progress progress) throws BaselineProblem, IOException;
  }

  /** Nothing has begun yet. */
  public WaitingRoom(String sentence, String leaveWord, Runnable leave) {
    super(12);
    setAlignment(Pos.CENTER);
    words.setText(sentence);
    words.setWrapText(true);
    words.setId("waiting-for");
    bar.setPrefWidth(BAR);
    bar.setAccessibleText(sentence);
    Button cancel = new Button(leaveWord);
    cancel.setId("waiting-leave");
    cancel.setCancelButton(true);
    cancel.setOnAction(
        event -> {
          left.set(true);
          leave.run();
        });
    getChildren().setAll(words, bar, cancel);
  }

  /**
   * Begins.
   *
   * @param refused makes a sentence of a reason why it can't be
   * @param ready gets the result on the screen's thread, unless the room was left
   */
  public <T> void begin(Work<T> work, Function<String, String> refused, Consumer<T> ready) {
    Thread.ofPlatform()
        .daemon()
        .name("waiting-room")
        .start(
            () -> {
              try {
                T result = work.result(progress());
                onScreen(() -> ready.accept(result));
              } catch (BaselineProblem | IOException problem) {
                onScreen(() -> refuse(refused.apply(String.valueOf(problem.getMessage()))));
              } catch (CancellationException cancelled) {
                // Nobody waits any more.
              }
            });
  }

  private void onScreen(Runnable action) {
    Platform.runLater(
        () -> {
          if (!left.get()) {
            action.run();
          }
        });
  }

  /** Says why nothing comes of it; the room can be left. */
  public void refuse(String sentence) {
    words.setText(sentence);
    bar.setVisible(false);
  }

  private Progress progress() {
    return new Progress() {
      @Override
      public void finished(int done, int of) {
        Platform.runLater(() -> bar.setProgress((double) done / of));
      }

      @Override
      public boolean cancelled() {
        return left.get();
      }
    };
  }

  /** Progress of one of some works of equal length, as progress of all of them. */
  public static Progress share(Progress whole, int number, int of) {
    return new Progress() {
      @Override
      public void finished(int done, int tasks) {
        whole.finished(number * tasks + done, of * tasks);
      }

      @Override
      public boolean cancelled() {
        return whole.cancelled();
      }
    };
  }

  /** A word of the program with a reason in it. */
  public static Function<String, String> reason(String key) {
    return reason -> Words.of(key, reason);
  }
}
