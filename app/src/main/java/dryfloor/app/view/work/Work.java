package dryfloor.app.view.work;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;

/**
 * What one window works on: the drawing with its past, what is known of its failures, which of them
 * is looked at, and at which moment. To be used by the screen's thread alone; every change of the
 * drawing asks for new answers by itself.
 */
public final class Work implements AutoCloseable {

  private final History<Installation> history;
  private final ReadOnlyObjectWrapper<Installation> installation;
  private final ReadOnlyObjectWrapper<Answers> answers;
  private final ReadOnlyObjectWrapper<Optional<Answers.Known>> ahead =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<String>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final DoubleProperty moment = new SimpleDoubleProperty(Double.POSITIVE_INFINITY);
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(0);
  private final BackgroundSweep sweep;
  private final LastSave lastSave;
  private final Executor screen;
  private final List<Exploration<?>> explorations = new ArrayList<>();

  /** Whether answers have been asked for, or need not be any more. */
  private boolean begun;

  /**
   * Begins to work on a drawing.
   *
   * @param screen runs what changes the screen, in order
   */
  public Work(Installation drawing, Executor screen) {
    this(drawing, screen, Runnable::run);
  }

  /**
   * The same, where something comes first.
   *
   * @param first takes what begins to ask for answers, to be run when that has been done
   */
  public Work(Installation drawing, Executor screen, Executor first) {
    this.screen = screen;
    history = new History<>(drawing);
    installation = new ReadOnlyObjectWrapper<>(drawing);
    answers = new ReadOnlyObjectWrapper<>(new Answers.Awaited(drawing));
    lastSave = new LastSave(drawing, screen);
    answers.addListener((property, before, now) -> lastSave.answered(now));
    sweep =
        new BackgroundSweep(
            screen, answers::set, known -> ahead.set(Optional.of(known)), progress::set);
    first.execute(
        () -> {
          if (!begun) {
            ask();
          }
        });
  }

  private void ask() {
    begun = true;
    sweep.ask(installation.get(), chosen.get());
  }

  /** A place for long questions, which ends with this work. */
  public <A> Exploration<A> exploration() {
    Exploration<A> begun = new Exploration<>(screen);
    explorations.add(begun);
    return begun;
  }

  /** All answers for the present drawing, where they are known. */
  public Optional<SweepResult> wholeSweep() {
    return answers.get() instanceof Answers.Known known && known.isWhole() && !isStale()
        ? Optional.of(known.sweep())
        : Optional.empty();
  }

  /** The drawing as it is now. */
  public ReadOnlyObjectProperty<Installation> installation() {
    return installation.getReadOnlyProperty();
  }

  /** What is known; about an earlier drawing until new answers are there. */
  public ReadOnlyObjectProperty<Answers> answers() {
    return answers.getReadOnlyProperty();
  }

  /**
   * Whether the answers are about an earlier drawing than the present one, or the one that is
   * looked at is still to come.
   */
  public boolean isStale() {
    return answers.get() instanceof Answers.Awaited
        || !answers.get().installation().equals(installation.get())
        || (!answers.get().isWhole() && chosen.get().isPresent() && chosenResult().isEmpty());
  }

  /**
   * What is worked out before everything else: normal operation, and the failure that was looked at
   * when the drawing changed.
   */
  public ReadOnlyObjectProperty<Optional<Answers.Known>> ahead() {
    return ahead.getReadOnlyProperty();
  }

  /**
   * Where what is looked at is answered for the present drawing, though other failures may still be
   * to come.
   */
  public Optional<Answers.Known> fresh() {
    return !isStale() && answers.get() instanceof Answers.Known known
        ? Optional.of(known)
        : ahead
            .get()
            .filter(known -> known.installation().equals(installation.get()))
            .filter(known -> chosen.get().isEmpty() || chosenIn(known).isPresent());
  }

  /** The answer to the chosen failure among these; none for normal operation. */
  public Optional<FailureResult> chosenIn(Answers.Known known) {
    return chosen
        .get()
        .flatMap(
            id ->
                known.sweep().results().stream()
                    .filter(result -> FailureNames.id(result.failure()).equals(id))
                    .findFirst());
  }

  /** How far the answers are, from 0 to 1; 1 also where nothing is worked on. */
  public ReadOnlyDoubleProperty progress() {
    return progress.getReadOnlyProperty();
  }

  /** Gives up working out answers; what is known stays, however stale. */
  public void stopAnswering() {
    begun = true;
    sweep.stop();
  }

  /** Works out the answers for the present drawing once more. */
  public void answerAgain() {
    ask();
  }

  /** Id of the failure that is looked at; none for normal operation. */
  public ReadOnlyObjectProperty<Optional<String>> chosen() {
    return chosen.getReadOnlyProperty();
  }

  /** Looks at a failure by its id, or at normal operation; at its end. */
  public void choose(Optional<String> failure) {
    chosen.set(failure);
    moment.set(Double.POSITIVE_INFINITY);
  }

  /** The moment that is looked at (s after the failure); infinite for the end. */
  public DoubleProperty moment() {
    return moment;
  }

  /** The answer for the chosen failure, as far as it is known. */
  public Optional<FailureResult> chosenResult() {
    return answers.get() instanceof Answers.Known known ? chosenIn(known) : Optional.empty();
  }

  /** Changes the drawing; can be undone. */
  public void change(Installation next) {
    if (!next.equals(history.present())) {
      history.change(next);
      show();
    }
  }

  /** Goes on with the last change, as while something is dragged: undone with it, in one. */
  public void amend(Installation next) {
    if (!next.equals(history.present())) {
      history.amend(next);
      show();
    }
  }

  /** This drawing is safe in its file: what changes is told against it from now on. */
  public void markSaved(Installation drawing) {
    lastSave.mark(drawing);
  }

  /** The drawing as it was opened or saved last. */
  public Installation saved() {
    return lastSave.saved();
  }

  /** What ended better and worse since the last save; nothing while that is not known. */
  public ReadOnlyObjectProperty<Optional<Changes>> changes() {
    return lastSave.changes();
  }

  public boolean canUndo() {
    return history.canUndo();
  }

  public boolean canRedo() {
    return history.canRedo();
  }

  public void undo() {
    history.undo();
    show();
  }

  public void redo() {
    history.redo();
    show();
  }

  private void show() {
    installation.set(history.present());
    ask();
  }

  /** Ends what runs in the background. */
  @Override
  public void close() {
    begun = true;
    sweep.close();
    lastSave.close();
    explorations.forEach(Exploration::close);
  }
}
