package dryfloor.app.view.work;

import dryfloor.analysis.sweep.Progress;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * A long question that somebody asks for, worked out beside the screen. A new one ends the one
 * before it. To be used by the screen's thread alone.
 *
 * @param <A> what the answer is
 */
public final class Exploration<A> implements AutoCloseable {

  /** How far it is. */
  public sealed interface State<A> {

    /** Nothing was asked, or it was cancelled. */
    record Idle<A>() implements State<A> {}

    /**
     * It is being worked out.
     *
     * @param share done, from 0 to 1
     */
    record Working<A>(double share) implements State<A> {}

    /** It is known. */
    record Done<A>(A answer) implements State<A> {}
  }

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().name("exploring").factory());

  private final AtomicInteger questions = new AtomicInteger();
  private final ReadOnlyObjectWrapper<State<A>> state =
      new ReadOnlyObjectWrapper<>(new State.Idle<>());
  private final Executor screen;

  Exploration(Executor screen) {
    this.screen = screen;
  }

  public ReadOnlyObjectProperty<State<A>> state() {
    return state.getReadOnlyProperty();
  }

  /** Asks something; it is told how far it is through the progress that it is given. */
  public void ask(Function<Progress, A> question) {
    int number = questions.incrementAndGet();
    state.set(new State.Working<>(0));
    worker.execute(
        () -> {
          try {
            A answer = question.apply(new Watch(number));
            show(number, new State.Done<>(answer));
          } catch (CancellationException cancelled) {
            show(number, new State.Idle<>());
          }
        });
  }

  /** Gives up what is being worked out, and forgets what was known. */
  public void cancel() {
    questions.incrementAndGet();
    state.set(new State.Idle<>());
  }

  private void show(int number, State<A> next) {
    screen.execute(
        () -> {
          if (questions.get() == number) {
            state.set(next);
          }
        });
  }

  @Override
  public void close() {
    questions.incrementAndGet();
    worker.shutdown();
  }

  /** Tells how far a question is; ends it when another one is asked. */
  private final class Watch implements Progress {

    private final int number;

    Watch(int number) {
      this.number = number;
    }

    @Override
    public void finished(int done, int of) {
      if (done < of) {
        show(number, new State.Working<>((double) done / of));
      }
    }

    @Override
    public boolean cancelled() {
      return questions.get() != number;
    }
  }
}
