package dryfloor.app.view.work;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The drawing as it was saved last, and what has become better and worse since. Where it was
 * changed before its failures were answered, they are answered for it beside the present ones.
 */
final class LastSave implements AutoCloseable {

  private final BackgroundSweep sweep;
  private final ReadOnlyObjectWrapper<Optional<Changes>> changes =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Installation saved;
  private Optional<SweepResult> known = Optional.empty();
  private boolean asked;
  private Answers present;

  LastSave(Installation saved, Executor screen) {
    this.saved = saved;
    this.present = new Answers.Awaited(saved);
    this.sweep = new BackgroundSweep(screen, this::learn, ahead -> {}, progress -> {});
  }

  /** What changed; nothing while answers for one of the two are missing. */
  ReadOnlyObjectProperty<Optional<Changes>> changes() {
    return changes.getReadOnlyProperty();
  }

  Installation saved() {
    return saved;
  }

  void mark(Installation drawing) {
    saved = drawing;
    known = Optional.empty();
    asked = false;
    learn(present);
  }

  /** Takes the answers that are known now. */
  void answered(Answers answers) {
    present = answers;
    learn(answers);
  }

  private void learn(Answers answers) {
    if (answers instanceof Answers.Known found
        && found.isWhole()
        && found.installation().equals(saved)) {
      known = Optional.of(found.sweep());
    }
    if (known.isEmpty() && !asked && !present.installation().equals(saved)) {
      asked = true;
      sweep.ask(saved, Optional.empty());
    }
    changes.set(
        known.flatMap(
            then ->
                present instanceof Answers.Known now && now.isWhole()
                    ? Optional.of(Changes.between(then, now.sweep()))
                    : Optional.empty()));
  }

  @Override
  public void close() {
    sweep.close();
  }
}
